import type { ClassifiedHazard } from '../../../classify/classification.ts';
import { inTerms } from '../../../words/in-terms.ts';
import { bodyOf, type ItemBody, paragraphs, type SectionBodies, said } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { capitalized, fill } from '../fill.ts';
import { sheetForm } from '../form.ts';
import type { SheetInput } from '../input.ts';
import { changesOf, dayOf, revisionHistory, revisionOf, revisionTexts, superseded } from '../revisions.ts';
import { secretsOf, tellingOf } from '../secrets.ts';
import { statementCodes, titleAndCode } from './classes.ts';

/** Section 16 (Annex II, 16; GHS, Table 1.5.2, 16). */
export function otherInformation(input: SheetInput): SectionBodies {
  const { record } = input;
  const { ghs: words, other } = input.words.sheet;
  const revision = revisionOf(input);
  const first = revision === null || (revision === '1' && superseded(input) === null);
  const changes = record.sheet.changes ? null : changesOf(input);
  return {
    date: {
      text: [
        fill(record.revised && !first ? words.revised : words.compiled, { date: dayOf(input) }),
        ...revisionTexts(input),
      ],
      list: revisionHistory(input),
      source: 'draft',
    },
    ...(changes && { changes: said('product record', changes) }),
    ...(first &&
      !changes &&
      !record.sheet.changes && { changes: said('product record', words.noFormerRevision) }),
    sources: sources(input),
    methods: methods(input),
    'statement-texts': statementTexts(input),
    ...(sheetForm(input.classification.basis.id).reach && {
      training:
        bodyOf('product record', { text: paragraphs(record.sheet.training) }) ?? said('law', words.training),
    }),
    caution: { text: other.caution, source: 'draft' },
  };
}

/** Where the data are from; of ingredients those alone that section 3 discloses. */
function sources(input: SheetInput): ItemBody {
  const { basis } = input.classification;
  const { other, ghs: words } = input.words.sheet;
  const { identity, name } = secretsOf(input);
  const byIngredient = ingredients(input)
    .filter(({ listed, index }) => listed && !identity.has(index))
    .map(({ index, classified: { data } }) =>
      fill(other.ingredientData, { name: name(index), source: input.words.source(data.source) }),
    );
  return {
    list: [
      other.own,
      fill(other.basis, { basis: inTerms(input.words.sheet.terms.bases, basis.title), asOf: basis.asOf }),
      ...byIngredient,
      sheetForm(basis.id).reach ? words.headingsUnion : words.headings,
    ],
    source: 'calculation',
  };
}

/** How each class of the mixture was found (16(d); CLP, Article 9). */
function methods(input: SheetInput): ItemBody {
  const { ghs: words } = input.words.sheet;
  const rows = input.classification.hazards.map(hazard => [
    titleAndCode(hazard, input),
    method(hazard, input),
    input.words.cites(hazard.because.cites, [
      input.thresholds.instrument,
      input.thresholds.physicalInstrument,
    ]),
  ]);
  return (
    bodyOf('calculation', { table: { columns: words.methodColumns, rows } }) ??
    said('calculation', words.noMethod)
  );
}

function method({ because, hazardClass, calculated }: ClassifiedHazard, input: SheetInput): string {
  const { ghs: words } = input.words.sheet;
  const evidence = calculated
    ? input.record.evidence.find(each => each.hazardClass === hazardClass)
    : undefined;
  if (evidence) return words.methods[evidence.kind];
  return capitalized(input.words.because(because, { ...tellingOf(input), classNamed: true }).rule);
}

/** Statements that stand as codes above, in full (16(e)). */
function statementTexts(input: SheetInput): ItemBody {
  const codes = new Set([
    ...input.classification.hazards.flatMap(({ statements }) => statements),
    ...ingredients(input)
      .filter(({ listed }) => listed)
      .flatMap(({ hazards }) => hazards.flatMap(statementCodes)),
  ]);
  const list = [...codes].sort().flatMap(code => {
    const text = input.statementText(code);
    return text === null ? [] : [`${code} ${text}`];
  });
  return bodyOf('label elements', { list }) ?? said('label elements', input.words.sheet.ghs.noCodes);
}
