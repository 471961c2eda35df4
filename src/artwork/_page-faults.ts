import type { ArtContent } from '../preflight/art-facts.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { ArtRules } from './art.ts';

const quoted = (names: Iterable<string>): string => [...names].map(name => `"${name}"`).join(', ');
const plain = (ink: string): string => ink.toLowerCase().replaceAll(/[\s_-]/g, '');

/** What stands against placing a page, one message for each rule. */
export function pageFaults(file: string, found: ArtContent, rules: ArtRules): readonly Diagnostic[] {
  const faults: Diagnostic[] = [];
  const tell = (code: string, message: string, hint: string, severity: Diagnostic['severity'] = 'error') =>
    faults.push({ code, severity, message: `${file} ${message}`, hint, at: { file } });
  const loose = [...found.fonts].filter(([, embedded]) => !embedded).map(([name]) => name);
  if (loose.length > 0)
    tell(
      'art-font',
      `uses fonts that are not embedded: ${loose.join(', ')}`,
      'embed them, or convert the text to outlines',
    );
  if (found.foreign.size > 0)
    tell(
      'art-rgb',
      `has objects in ${[...found.foreign].join(', ')}, which no press prints`,
      'convert everything to DeviceCMYK, DeviceGray and spot inks with the profile of the press',
    );
  if (found.ink > rules.inkLimit + 0.5)
    tell(
      'art-ink',
      `puts ${Math.round(found.ink)} % of ink on one place; the press takes ${rules.inkLimit} %`,
      'convert it with a profile of that ink limit',
    );
  const technical = [...found.spots].filter(
    ink =>
      rules.cutInks.includes(plain(ink)) ||
      ['all', 'none'].includes(plain(ink)) ||
      rules.reservedInks.some(reserved => plain(reserved) === plain(ink)),
  );
  if (technical.length > 0)
    tell(
      'art-die-line',
      `uses the spot ink ${quoted(technical)}: a cut line, or another ink that is not printed`,
      'take the cut line out of the artwork; the label has its own',
    );
  if (found.layers)
    tell('art-layers', 'has layers, which may be switched off', 'merge them into what is to be printed');
  if (found.forbidden.size > 0)
    tell(
      'art-forbidden',
      `has what PDF/X-4 does not allow or what cannot be placed: ${[...found.forbidden].join('; ')}`,
      'export the page as PDF/X-4',
    );
  if (found.unmeasured.size > 0 && faults.length === 0)
    tell(
      'art-ink-unmeasured',
      `has ${[...found.unmeasured].join(', ')}, whose ink was not measured`,
      `see in the separation preview of the program that made it that it stays under ${rules.inkLimit} % of ink on one place; pictures without loss (Flate) of 8 bits a channel are measured here`,
      'note',
    );
  return faults;
}
