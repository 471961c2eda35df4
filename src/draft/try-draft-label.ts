import { labelDocument } from '../document/label.ts';
import { loadTemplate } from '../document/template.ts';
import type { TypeRules } from '../document/type-rules.ts';
import { readTemplate } from '../environment/package-files.ts';
import { openOnDocuments } from '../labelling/open-on-documents.ts';
import type { PagedDocument } from '../layout/frame.ts';
import type { Area } from '../layout/label/box.ts';
import { type LabelFacts, labelFacts } from '../layout/label/facts.ts';
import { tryLabel } from '../layout/label/layout-label.ts';
import type { Remedies } from '../layout/label/remedies.ts';
import { loadPressProfile, type Stock } from '../layout/stock.ts';
import { CODER_INK } from '../pdf/ink.ts';
import { DEFAULT_DIE } from '../pdf/profile.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { completeRecord } from '../record/complete.ts';
import type { Pack } from '../record/product-record.ts';
import { type Diagnostic, hasErrors, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { VERSION } from '../version.ts';
import type { Words } from '../words/words.ts';
import { brandLook } from './brand-look.ts';
import { packNumberDoubts } from './check-packs.ts';
import { claimFindings } from './claim-findings.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';
import { labelArt } from './label-art.ts';
import { labelInLanguage } from './label-language.ts';
import type { LabelOptions } from './label-options.ts';
import { cutOf, labelPreflight, labelStock, type PackDie, pressWish } from './label-stock.ts';
import { openFindings } from './open-findings.ts';
import { productFor } from './purposes/product-for.ts';
import type { PreparedLabel, Purpose } from './purposes/purpose.ts';
import { purposeOf } from './purposes/purposes.ts';
import { statementFindings } from './statement-findings.ts';

/** A label drafted, or what would let it be. */
export interface LabelDraft {
  readonly bytes: Uint8Array | null;
  /** The page as it was laid out, for pictures and sheets of it. */
  readonly document: PagedDocument | null;
  /** Places of the sections on it. */
  readonly areas: readonly Area[];
  /** The maker's color as it is printed, percent of the process inks; null where the label has none. */
  readonly brand: readonly number[] | null;
  /** What stands on it and where. */
  readonly facts: LabelFacts | null;
  readonly stock: Stock | null;
  /** What the law of the purpose asks of the type. */
  readonly type: TypeRules | null;
  /** Where it does not fit: larger dies, each laid out. */
  readonly remedies: Remedies | null;
  readonly diagnostics: readonly Diagnostic[];
}

const refused = (diagnostics: readonly Diagnostic[]): LabelDraft => ({
  bytes: null,
  document: null,
  areas: [],
  brand: null,
  facts: null,
  stock: null,
  type: null,
  remedies: null,
  diagnostics,
});

/** A container in the workplace is no pack of the record: it has neither its number nor its shape. */
const withoutPack = (pack: Pack): Pack => ({ ...pack, id: 'tanks', gtin: null, container: null });

/** The die of the label, or the bare size of the panel alone: it is placed in artwork, and so has square corners. */
function dieOf({ pack, only, size }: LabelOptions, { die: own }: Purpose): PackDie | null {
  if (own) return size ? { ...size, cornerRadius: 0 } : own;
  if (only && size) return { ...size, cornerRadius: 0 };
  if (only && pack.label) {
    const { width, height, unit, panels } = pack.label;
    return { width: width / panels, height, unit, cornerRadius: 0 };
  }
  return pack.label;
}

/** Why a label carries no artwork of its maker; null where it does. */
function withoutArt({ only, target = 'press' }: LabelOptions, { die }: Purpose): string | null {
  if (only) return 'it is the regulated panel alone';
  if (target !== 'press') return 'a roll printer prints black alone';
  return die ? 'a sign of the workplace carries none' : null;
}

/**
 * As `draftLabel`, with what stands on the label and where, or the dies that would hold it.
 * @param given classified under any basis; the purpose names its own
 */
export async function tryDraftLabel(
  given: ClassifiedProduct,
  options: LabelOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<LabelDraft> {
  const { purpose: id, only, date, output, target = 'press', marks = false, language = 'en' } = options;
  const purpose = purposeOf(id);
  const pack = purpose.die ? withoutPack(options.pack) : options.pack;
  const judged = await productFor(given, purpose);
  if (!judged.ok) return refused(judged.diagnostics);
  const spoken = await labelInLanguage(judged.value, purpose, language, words);
  if (!spoken.ok) return refused(spoken.diagnostics);
  const { product, words: say, said: tongue, foreign, added } = spoken.value;
  const { record } = product;
  const complete = completeRecord(record);
  if (!complete.ok) return refused(complete.diagnostics);
  const prepared = purpose.prepare(product, pack, words, say);
  const { elements, findings: told, shorter } = prepared;
  const stated = [
    ...spoken.value.findings,
    ...told,
    ...statementFindings(record, elements, words, 'error'),
    ...claimFindings(record, elements, words),
    ...openFindings(product, words),
    ...packNumberDoubts(record, pack),
  ];
  if (hasErrors(stated)) return refused(stated);
  const stockDie = dieOf(options, purpose);
  if (!stockDie)
    return refused([
      {
        code: 'die-missing',
        severity: 'error',
        message: `pack \`${pack.id}\` gives no size of its label`,
        hint: 'add `label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}` to the pack',
        at: pack.at,
      },
    ]);
  const profile = options.press?.profile
    ? succeed(options.press.profile)
    : await loadPressProfile(readTemplate);
  if (!profile.ok) return refused(profile.diagnostics);
  const template = await loadTemplate(readTemplate, `labels/${id}.hbs`);
  const instant = `${date}T00:00:00Z`;
  // Both languages leave off the same.
  const second = added && {
    elements: purpose.prepare(added.product, pack, words, added.words).elements,
    said: added.said,
  };
  const modelOf = ({ sections, type }: Pick<PreparedLabel, 'sections' | 'type'>) =>
    labelDocument(
      {
        record: complete.value,
        pack,
        elements,
        draft: true,
        dilutions: (pack.dilutions ?? []).map(say.dilution),
        notices: say.draftNotices(openOnDocuments(product.classification)),
        date: instant,
        only,
        sections,
        type,
        said: tongue,
        foreign,
        added: second,
      },
      template,
    );
  const first = modelOf(prepared);
  const { maker } = complete.value;
  const wish = pressWish(maker.press, options.press?.wish);
  const die = cutOf(wish);
  const dieInk = die.ink ?? DEFAULT_DIE.ink;
  const onPress = target === 'press';
  const look =
    only || !onPress || first.type?.plain ? null : brandLook(maker, profile.value, { file: record.file });
  const jobLine = (made: Stock) =>
    words.jobLine(made, first.title, [dieInk, ...(first.panel ? [] : [CODER_INK])]);
  const blank = labelStock(stockDie, profile.value, wish, {
    target,
    jobLine: marks && !only ? jobLine : null,
  });
  const without = withoutArt(options, purpose);
  const question = {
    stock: blank,
    files: product.art ?? new Map(),
    dieInk,
    purpose: id,
    without,
    brand: look?.ink ?? null,
  };
  const { findings: ofArt, ...art } = await labelArt(record, maker, pack, question);
  const said = [...stated, ...(look?.findings ?? []), ...ofArt];
  if (hasErrors(said)) return refused(said);
  const banded = look?.layout && !art.artwork ? { brand: look.layout } : {};
  const stock: Stock = { ...blank, ...banded, ...art };
  let [model, trial] = [first, await tryLabel(first, fonts, stock)];
  if (shorter && !trial.layout) {
    model = modelOf(shorter);
    trial = await tryLabel(model, fonts, stock);
    said.push(shorter.finding);
  }
  const { layout, remedies, diagnostics } = trial;
  const findings = diagnostics.map(finding => ({ ...finding, at: finding.at ?? pack.at }));
  if (!layout) return { ...refused([...said, ...findings]), stock, type: model.type, remedies };
  const facts = labelFacts(model, layout, stock, fonts);
  const common = { version: VERSION, copy: copyMark(product, 'distribution') };
  const brand = look?.ink && { brand: look.ink };
  const bytes = await writePdf(
    layout.document,
    fonts,
    onPress
      ? { ...common, kind: 'label', die, ...(output && { iccProfile: output }), ...brand }
      : { ...common, kind: 'printer' },
  );
  const held = labelPreflight(stock, {
    dieInk: model.panel ? undefined : dieInk,
    pdfx4: output !== undefined,
    capitals: capitalsOf(facts, model.type),
    pictogramSide: model.type?.pictogram?.least ?? 0,
    inks: [dieInk, CODER_INK],
  });
  const found = await preflight(bytes, { ...held, ...brand });
  if (hasErrors(found))
    throw new Error(`preflight of the label: ${found.map(({ message }) => message).join('; ')}`);
  const { barCode, barCodeFacts, document, areas } = layout;
  const bars = words.barCodeSize(barCodeFacts, barCode?.symbol.spec.name ?? '', stock.unit ?? 'mm');
  const examined = prepared.examine?.(facts, stock.die) ?? [];
  return {
    bytes,
    document,
    areas,
    brand: look?.ink?.cmyk ?? null,
    facts,
    stock,
    type: model.type,
    remedies: null,
    diagnostics: [...said, ...findings, ...bars, ...examined, ...found],
  };
}

/** Texts of the label whose capitals have a least height by law. */
const capitalsOf = ({ texts }: LabelFacts, type: TypeRules | null) =>
  texts.flatMap(({ role, text }) => {
    const rule = type?.least[role];
    return rule?.capHeight === undefined ? [] : [{ text, height: rule.capHeight, cite: rule.cite }];
  });
