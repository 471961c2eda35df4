import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hazardClasses, permittedStatements } from '../../src/notation/classes.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { printHazard } from '../../src/notation/print-hazard.ts';

const written = hazardClasses.flatMap(({ class: name, brackets, categories }) =>
  categories.flatMap(category => {
    const group = brackets === 'group' && category.category !== '';
    const code = `${name} ${group ? `(${category.category})` : category.category}`.trim();
    const inside =
      brackets === 'acute-route'
        ? ['oral', 'dermal', 'inhalation: gas', 'inhalation: vapour', 'inhalation: mist', 'inhalation']
        : brackets === 'organs' && !category.byEffect
          ? ['lungs', 'eyes, nervous system', 'kidney; oral', 'inhalation']
          : brackets === 'route'
            ? ['inhalation']
            : [];
    return [
      ...['', ...permittedStatements(category)].map(code => (code === '' ? '' : `; ${code}`)),
      ...inside.map(text => ` (${text})`),
    ].map(tail => ({ code, tail }));
  }),
);

it('prints what it read, and reads what it printed, for every class, category, H-code and bracket', () => {
  fc.assert(
    fc.property(fc.constantFrom(...written), fc.boolean(), ({ code, tail }, minimum) => {
      const first = parseHazard(`${code}${minimum ? ' *' : ''}${tail}`);
      expect(first).toMatchObject({ ok: true });
      if (!first.ok) return;
      expect(first.value.minimum).toBe(minimum);
      const printed = printHazard(first.value);
      expect(parseHazard(printed)).toEqual(first);
    }),
    { numRuns: 3000 },
  );
});
