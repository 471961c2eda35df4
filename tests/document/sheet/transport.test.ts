import { describe, expect, it } from 'vitest';
import { run as ship } from '../../../src/cli/commands/ship.ts';
import { type SheetInput, sheetJson, transportQuestions } from '../../../src/document/sheet.ts';
import { inProcess } from '../../cli/_command.ts';
import { inputAround, sheetInput } from './sheet-input.ts';

const section = (input: SheetInput) => {
  const { items } = sheetJson(input).sections[13]!;
  return (key: string) => items.find(item => item.key === key)!;
};
const description = ['un-number', 'shipping-name', 'transport-class', 'packing-group'] as const;
const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const supplied = { source: 'supplier sheet (example)' };

// The command's own answer is the other side of each check; tests of transport hold that against the law.
describe('section 14 of the products of the demo', () => {
  it.each(['patio-cleaner', 'degreaser', 'descaler'])(
    '%s says what the command says of each pack',
    async name => {
      const path = `templates/demo/${name}.yaml`;
      const input = await sheetInput(path);
      const of = section(input);
      expect(input.record.packs.length).toBeGreaterThan(0);
      for (const { id } of input.record.packs) {
        const { out } = await inProcess(ship, [path, '--pack', id, '--json']);
        const answer = JSON.parse(out);
        expect(description.map(key => of(key).text).join(', ')).toBe(answer.description);
        expect(description.map(key => of(key).state)).toEqual(description.map(() => 'filled'));
        const { innerLimit, grossLimit, cite } = answer.limitedQuantity;
        expect(of('special-precautions').text).toContain(
          `allowed; inner packagings up to ${innerLimit}, package up to ${grossLimit} [${cite}]`,
        );
        if (answer.marinePollutant)
          expect(of('environmental-hazards').text).toContain('Marine pollutant: yes');
        for (const missing of answer.missing) expect(transportQuestions(input).join('\n')).toContain(missing);
      }
    },
  );
});

/** Nothing of it is open but what a flash point decides (49 CFR 173.120). */
const solvent = (flash: string | null) => ({
  properties: {
    ...(flash === null ? {} : { 'flash-point': `${flash} (closed cup)` }),
    'initial-boiling-point': '200 C',
    density: '1 g/mL',
  },
  formula: [
    { name: 'trial solvent', percent: 60, hazards: ['Asp. Tox. 1'], ...supplied },
    { name: 'trial oil', percent: 40, hazards: [], ...supplied },
  ],
});
const packs = (...contents: string[]) => ({
  packs: contents.map((each, at) => ({ id: `p${at}`, contents: each })),
});
const amine = (more: Record<string, unknown> = {}) => ({
  properties: { 'flash-point': 'none', pH: 13 },
  formula: [
    { name: 'trial amine', percent: 12, hazards: ['Skin Corr. 1B'], ...supplied, ...more },
    { name: 'trial base', percent: 6, hazards: ['Skin Corr. 1C'], ...supplied },
    water,
  ],
});

describe('section 14', () => {
  it('is not yet searched where transport is undecided, and the review names what is missing', async () => {
    const input = await inputAround({ ...solvent(null), ...packs('1 L') });
    expect(input.transport[0]!.answer.answer).toBe('undecided');
    const of = section(input);
    expect(of('un-number')).toMatchObject({ state: 'open', text: 'Not yet searched for this draft.' });
    // What each outcome comes to is told, and nothing is told without its outcome.
    const told = [...(of('un-number').notes ?? []), ...description.slice(1).map(key => of(key).text ?? '')];
    expect(told.join('\n')).toMatch(/^If the flash point puts it in Class 3, packing group II: UN/mu);
    for (const line of told.join('\n').split('\n')) expect(line).toMatch(/^If /u);
    expect(transportQuestions(input).join('\n')).toMatch(
      /section 14: transport is not decided: missing: flash point \(closed cup\) \[49 CFR 173\.120\(a\)\]/u,
    );
  });

  // 49 CFR 173.150(f)(2): a combustible liquid is not subject in a non-bulk packaging, 171.8: at most 450 L.
  it('tells packs apart where one is regulated and the other is not', async () => {
    const of = section(await inputAround({ ...solvent('70 C'), ...packs('1 L', '1000 L') }));
    expect(of('un-number').text).toMatch(
      /^1 L: Not regulated by highway and rail in the United States .*\[49 CFR 173\.150\(f\)\(2\)\]\n1000 L: NA1993$/u,
    );
    expect(of('transport-class').text).toContain('1000 L: Combustible liquid');
  });

  it('does not say that the product is no marine pollutant while an ingredient cannot be looked up', async () => {
    const input = await inputAround({ ...amine(), ...packs('1 L') });
    expect(section(input)('environmental-hazards').state).toBe('open');
    expect(transportQuestions(input).join('\n')).toContain('trial amine has no CAS number to look up');
    const known = await inputAround({ formula: [{ name: 'methanol', cas: '67-56-1', percent: 34 }, water] });
    expect(section(known)('environmental-hazards').text).toMatch(/^Marine pollutant: no;/u);
  });

  it('gives way to the texts of the record', async () => {
    const transport = { 'un-number': 'UN1760', notes: 'Keep upright.' };
    const of = section(await inputAround({ ...amine(), ...packs('1 L'), sds: { transport } }));
    expect(of('un-number')).toMatchObject({ text: 'UN1760', source: 'product record' });
    expect(of('special-precautions')).toMatchObject({ text: 'Keep upright.', source: 'product record' });
    expect(of('packing-group')).toMatchObject({ text: 'II', source: 'reference tables' });
  });

  // 49 CFR 172.203(k): a generic entry needs technical names; 29 CFR 1910.1200(i)(1) lets an identity be withheld.
  it('puts the name of the claim in place of a withheld technical name, and says so to the reviewer', async () => {
    const open = section(await inputAround(amine()));
    expect(open('shipping-name').text).toBe('Corrosive liquids, n.o.s. (trial amine, trial base)');
    const input = await inputAround(amine({ 'trade-secret': 'identity' }));
    const { text } = section(input)('shipping-name');
    expect(text).toBe('Corrosive liquids, n.o.s. (Trade secret ingredient 1, trial base)');
    expect(JSON.stringify(sheetJson(input))).not.toContain('trial amine');
    expect(transportQuestions(input).join('\n')).toContain('a shipping paper needs it [49 CFR 172.203(k)]');
  });

  it('leaves number and shipping name open where they would tell a withheld identity', async () => {
    const isopropanol = (more: Record<string, unknown>) => ({
      properties: { 'flash-point': '20 C (closed cup)', 'initial-boiling-point': '79 C' },
      formula: [{ name: 'isopropyl alcohol', cas: '67-63-0', percent: 60, ...more }, water],
    });
    const open = section(await inputAround(isopropanol({})));
    expect(open('shipping-name').text).toBe('Isopropanol solution');
    const input = await inputAround(isopropanol({ 'trade-secret': 'identity' }));
    const of = section(input);
    expect([of('un-number').state, of('shipping-name').state]).toEqual(['open', 'open']);
    expect(JSON.stringify(sheetJson(input).sections[13])).not.toMatch(/isoprop|UN1219/iu);
    expect(of('transport-class').text).toBe('3');
    expect(transportQuestions(input).join('\n')).toContain('whose identity is claimed as a trade secret');
  });
});
