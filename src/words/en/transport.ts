import type { Fact } from '../../transport/fact.ts';
import { classWord, count, group, list, say, text, type Values } from './_transport-values.ts';

/** One sentence a fact, without its end point. */
const sentences: Readonly<Record<string, (values: Values) => string>> = {
  'no-flash-point': () => 'the test found no flash point',
  'flash-point-above': v =>
    `flash point ${text(v.flashPoint)} C, at or above ${text(v.limit)} C: no combustible liquid`,
  'flammable-liquid': v => `flash point ${text(v.flashPoint)} C, not above ${text(v.limit)} C: Class 3`,
  'combustible-liquid': v =>
    `flash point ${text(v.flashPoint)} C, above ${text(v.above)} C and below ${text(v.below)} C: combustible liquid where no other class is met`,
  'flammable-packing-group': v =>
    `initial boiling point ${text(v.boilingPoint)} C (limit ${text(v.boilingLimit)} C), flash point ${text(v.flashPoint)} C (limit ${text(v.flashLimit)} C): ${group(v.group)}`,
  'flammable-category': v => `flammable liquid of category ${text(v.category)}, given without a flash point`,
  'flammable-not-classified': () => 'not classified as a flammable liquid',
  'corrosive-to-skin': v => `corrosive to skin, category ${text(v.category)}: Class 8`,
  'skin-packing-group': v => `category ${text(v.category)} by test: ${group(v.group)}`,
  'skin-packing-group-worked-out': v =>
    `category ${text(v.category)} worked out from the ingredients or the pH stands for the test: ${group(v.group)}`,
  'corrosive-to-metals': v =>
    `corrosive to metals (steel or aluminum, more than ${text(v.rate)} mm a year): Class 8, ${group(v.group)} by that alone`,
  'not-corrosive': () => 'neither corrosive to skin nor to metals',
  toxic: v =>
    v.estimate === null
      ? `acutely toxic (${text(v.route)}) by its category: Division 6.1, ${group(v.group)}`
      : `acute toxicity estimate ${text(v.estimate)} (${text(v.route)}): Division 6.1, ${group(v.group)}`,
  'not-toxic': () => 'acute toxicity does not reach Division 6.1',
  'other-class': v => `${text(v.hazardClass)} ${text(v.category)}: ${classWord(v.class)}, ${group(v.group)}`,
  'marine-pollutant': v =>
    `${text(v.name)} (listed as ${text(v.listed)}) ${text(v.percent)} %, at or above ${text(v.limit)} %: marine pollutant`,
  'marine-pollutant-below': v =>
    `${text(v.name)} (listed as ${text(v.listed)}) ${text(v.percent)} %, below ${text(v.limit)} %: no marine pollutant by it`,
  'marine-pollutant-if': v =>
    `${text(v.name)} may be ${text(v.listed)}, a marine pollutant: the record does not give its ${text(v.condition)}`,
  'marine-pollutant-non-bulk': v =>
    `marine pollutant (${text(v.names)}) in a non-bulk package by highway, rail or air: requirements specific to marine pollutants do not apply`,
  'hazardous-substance': v =>
    `${text(v.name)}: ${text(v.kilograms)} kg in one package reaches its reportable quantity of ${text(v.pounds)} lb: hazardous substance (RQ)`,
  'reportable-quantity-below': v =>
    `${text(v.name)}: ${text(v.kilograms)} kg in one package, below its reportable quantity of ${text(v.pounds)} lb`,
  'reportable-quantity-unknown': v =>
    `${text(v.name)} has a reportable quantity of ${text(v.pounds)} lb; the mass of the package is not known`,
  'package-unknown': () =>
    'size or mass of the package is not known: a non-bulk package that is no hazardous substance is not subject',
  'package-mass-unknown': v =>
    `whether ${text(v.names)} reaches a reportable quantity depends on the mass of the package`,
  'listed-by-name': v => `${text(v.name)} alone is listed: ${text(v.un)}, ${text(v.entry)}`,
  'listed-by-concentration': v =>
    `${text(v.name)} ${text(v.percent)} % lies in the range of ${text(v.un)}, ${text(v.entry)}`,
  'named-entry': v =>
    `${text(v.name)} (${text(v.percent)} %) is the predominant hazardous material and has an entry of its own: ${text(v.un)}, ${text(v.entry)}`,
  'packing-group-of-table': v => `${text(v.un)} has ${group(v.group)}; no test shows another`,
  precedence: v =>
    `${classWord(v.primary)} prevails over ${list((v.subsidiary as readonly string[]).map(name => classWord(name)))}; the most stringent is ${group(v.group)}`,
  'no-precedence': v => `the table of precedence does not order ${text(v.classes)}`,
  'generic-entry': v =>
    `no name of the table fits; generic entry ${text(v.un)}, ${text(v.name)}${count(v.technical) > 0 ? `, with ${text(v.technical)} as technical name` : ''}`,
  'no-generic-entry': v =>
    `the table has no generic entry for ${classWord(v.class)}${count(v.subsidiary) > 0 ? ` with ${list((v.subsidiary as readonly string[]).map(name => classWord(name)))}` : ' alone'}${v.group ? ` in ${group(v.group)}` : ', as long as no packing group is known'}`,
  'subsidiary-added': v =>
    `no entry shows ${list((v.subsidiary as readonly string[]).map(name => classWord(name)))} as well: described beside ${text(v.un)}`,
  'no-technical-name': v =>
    `${text(v.un)} needs technical names; no ingredient is known to make ${list((v.classes as readonly string[]).map(name => classWord(name)))}`,
  'others-open': v =>
    `${list((v.classes as readonly string[]).map(name => classWord(name)))} would still be open`,
  'combustible-non-bulk': v =>
    `combustible liquid in a non-bulk package (at most ${text(v.litres)} L) that is no hazardous substance, hazardous waste or marine pollutant: not subject by highway or rail`,
  'no-sustained-combustion': () => 'the liquid does not sustain combustion: not Class 3',
  'aluminum-exception': () =>
    'corrosive to aluminum alone, packing group III, by motor vehicle or rail in a packaging that it does not attack: not subject',
  'aqueous-alcohol': v =>
    `aqueous solution of about ${text(v.percentByVolume)} % alcohol by volume (limit ${text(v.limit)} %) with ${text(v.water)} % water (at least ${text(v.waterLimit)} %) and no other hazardous material: not subject`,
  'excepted-quantity-exception': v =>
    `${text(v.amount)} ${text(v.unit)}, at most ${text(v.inner)} an inner and ${text(v.outer)} an outer packaging: not subject but for classing, reports, packages and the mark of the section`,
  'limited-quantity-mark': v =>
    `limited quantity: mark of ${text(v.side)} mm a side (${text(v.reduced)} mm where the package is too small), no hazard label by highway, rail or vessel`,
  aircraft: v =>
    `by air ${text(v.un)} has limits of its own a package: passenger ${text(v.passenger)}, cargo ${text(v.cargo)}`,
  'aircraft-pack': v => {
    const held = v.litres === null ? `${text(v.kilograms)} kg` : `${text(v.litres)} L`;
    const told = (verdict: Values[string] | undefined): string =>
      verdict === 'open'
        ? 'cannot be compared'
        : verdict === 'within'
          ? 'within the limit'
          : 'over the limit or forbidden';
    return `net ${held} in the package: passenger aircraft ${told(v.passenger)}, cargo aircraft ${told(v.cargo)}; inner packagings, pressure and limited quantities by air have limits of their own (173.27, ICAO Technical Instructions), to be checked`;
  },
  vessel: v =>
    `by vessel ${text(v.un)} has stowage category ${v.stowage === '' ? 'none printed' : text(v.stowage)}${v.other === '' ? '' : `, provisions ${text(v.other)} (176.84)`}; segregation and stowage by the IMDG Code are to be checked`,
  'bulk-package': v =>
    `${text(v.litres)} L in one packaging, above ${text(v.limit)} L: bulk packaging${count(v.sections) > 0 ? `, sections 173.${text(v.sections)}` : ', for which the table names no section'}; no limited quantity`,
  'other-modes-alone': v =>
    `${text(v.un)} is marked ${text(v.modes)}: subject by ${list((v.modes as readonly string[]).map(mode => (mode === 'A' ? 'aircraft' : 'vessel')))} alone`,
  'no-class': () => 'no hazard class is met, and no class that would decide it is open',
  aerosol: v => `aerosol of category ${text(v.category)}: ${classWord(v.class)}`,
  'no-limited-quantity': v =>
    `no limited quantity for ${classWord(v.class)} in ${group(v.group)} under this entry`,
  'no-pack': v => `limited quantity up to ${text(v.innerLimit)} an inner packaging; no pack is given`,
  'inner-within': v => `contents ${text(v.contents)}, within ${text(v.limit)} an inner packaging`,
  'inner-over': v =>
    `contents ${text(v.contents)}, over ${text(v.limit)} an inner packaging: no limited quantity`,
  'inner-unknown': v => `contents ${text(v.contents)} cannot be held against ${text(v.limit)}`,
  'gross-within': v =>
    `${text(v.kilograms)} kg contents and tare in the package, within ${text(v.limit)}; the empty inner packagings are not in it`,
  'gross-over': v => `${text(v.kilograms)} kg contents and tare in the package, over ${text(v.limit)}`,
  'gross-unknown': v => `gross mass is not known (density or count missing); at most ${text(v.limit)}`,
  'by-approval': v => `${classWord(v.class)} is assigned by tests and lists of the law, with an approval`,
};

/** The working of a fact. */
export const transportWorking = (fact: Fact): string => say(sentences, fact);

/** What every answer ends with: modes beside highway and rail, and who decides. */
export const transportNotes: readonly string[] = [
  'Draft for qualified review: the shipper classes the material (49 CFR 173.22) and checks the current text.',
  'Worked out for highway and rail in the United States. For air and vessel the columns of the table are shown; the ICAO Technical Instructions, the IMDG Code and ADR were not read: the shipper checks their current text.',
];
