import Fraction from 'fraction.js';
import { readMeasure, splitMeasure } from '../quantity/measure.ts';
import type { BatchSize, FormulaLine } from '../record/product-record.ts';
import { type Diagnostic, hasErrors, type Position } from '../report/diagnostic.ts';
import { type Basis, batchAmount, lineAmount, percentText } from './_amounts.ts';
import { lineError, lineName } from './_findings.ts';

/** Percent that a line has of its composition. */
export type Share =
  | { readonly kind: 'fixed'; readonly percent: Fraction }
  | { readonly kind: 'range'; readonly low: Fraction; readonly high: Fraction }
  /** A part of what the other lines leave: the balance, or amounts beside percentages. */
  | { readonly kind: 'rest'; readonly part: Fraction };

/** A list of lines that together make 100 %: a formula, or the composition of a raw material. */
export interface Composition {
  readonly name: string;
  readonly lines: readonly FormulaLine[];
  readonly batch: BatchSize | null;
  /** g/mL of the whole. */
  readonly density: Fraction | null;
  readonly at: Position;
  readonly excerpt: string | undefined;
  readonly path: string;
}

const hundred = new Fraction(100);
const one = new Fraction(1);
/** A formula accounts for 100 % within this. */
const tolerance = new Fraction(1, 100);

/** Shares of the lines, in their order; findings where the lines do not determine them. */
export function sharesOf(
  composition: Composition,
  basis: Basis,
  findings: Diagnostic[],
): readonly Share[] | null {
  const { lines, batch } = composition;
  const balances = lines.filter(({ amount }) => amount.kind === 'balance');
  const weighed = lines.filter(({ amount }) => amount.kind === 'mass' || amount.kind === 'volume');
  const before = findings.length;
  const failed = () => hasErrors(findings.slice(before));
  for (const line of balances.slice(1))
    findings.push(
      lineError(
        line,
        'two-balances',
        `a second balance line: ${lineName(line)}`,
        'only one line can take what the others leave; give this one a percentage',
      ),
    );

  const amounts = new Map<FormulaLine, Fraction>();
  for (const line of weighed) {
    const amount = lineAmount(line, basis);
    if (amount instanceof Fraction) amounts.set(line, amount);
    else findings.push(amount);
  }
  let size = batch && weighed.length > 0 ? batchAmount(batch, composition.density, basis) : null;
  if (batch && weighed.length > 0 && size === null)
    findings.push(batchWithoutDensity(composition, batch, basis));
  if (weighed.length > 0 && balances.length > 0 && !batch) {
    size = basis === 'weight' ? hundredOfUnit(lines, weighed) : null;
    findings.push(
      size ? perHundred(composition, weighed[0]!) : balanceWithoutBatch(composition, weighed, balances[0]!),
    );
  }
  if (failed()) return null;

  const total = [...amounts.values()].reduce((sum, amount) => sum.add(amount), new Fraction(0));
  if (weighed.length > 0 && size === null && total.equals(0)) {
    findings.push(lineError(weighed[0]!, 'no-amount', 'the amounts of the formula add up to nothing'));
    return null;
  }
  const onlyAmounts = weighed.length === lines.length;
  const shares = lines.map((line): Share => {
    const { amount } = line;
    if (amount.kind === 'balance') return { kind: 'rest', part: one };
    if (amount.kind === 'percent') {
      const [low, high] = [amount.low.exact, amount.high.exact];
      return low.equals(high) ? { kind: 'fixed', percent: low } : { kind: 'range', low, high };
    }
    const mass = amounts.get(line)!;
    if (size) return { kind: 'fixed', percent: mass.div(size).mul(hundred) };
    if (onlyAmounts) return { kind: 'fixed', percent: mass.div(total).mul(hundred) };
    return { kind: 'rest', part: mass.div(total) };
  });
  checkSum(composition, shares, findings);
  return failed() ? null : shares;
}

function checkSum(composition: Composition, shares: readonly Share[], findings: Diagnostic[]): void {
  const { lines } = composition;
  let low = new Fraction(0);
  let high = new Fraction(0);
  for (const share of shares) {
    if (share.kind === 'fixed') [low, high] = [low.add(share.percent), high.add(share.percent)];
    if (share.kind === 'range') [low, high] = [low.add(share.low), high.add(share.high)];
  }
  const converted = lines
    .flatMap(({ amount }, index) => {
      const share = shares[index]!;
      return share.kind === 'fixed' && (amount.kind === 'mass' || amount.kind === 'volume')
        ? [`\`${amount.written}\` is ${percentText(share.percent)}`]
        : [];
    })
    .join(', ');
  const complain = (message: string, hint: string) =>
    findings.push({
      code: 'sum-not-100',
      severity: 'error',
      message: `${composition.name}: ${message}`,
      hint: converted === '' ? hint : `${hint}; ${converted}`,
      at: composition.at,
      excerpt: composition.excerpt,
      path: composition.path,
    });
  const ranged = !low.equals(high);
  if (shares.some(({ kind }) => kind === 'rest')) {
    // Ranges give way to each other: only what the low ends leave must be something.
    const over = low.sub(hundred);
    if (over.gt(tolerance))
      complain(
        `the lines beside the balance sum to ${ranged ? 'at least ' : ''}${percentText(low)}: nothing is left for it`,
        `take ${percentText(over)} out`,
      );
    else if (
      low.gte(hundred) &&
      shares.some((share, index) => share.kind === 'rest' && lines[index]!.amount.kind !== 'balance')
    )
      complain('the percentages sum to 100 %: nothing is left for the weighed lines', 'correct a percentage');
    return;
  }
  const [over, short] = [low.sub(hundred), hundred.sub(high)];
  const least = ranged ? 'at least ' : '';
  const most = ranged ? 'at most ' : '';
  if (over.gt(tolerance))
    complain(
      `the lines sum to ${least}${percentText(low)}: ${percentText(over)} too much`,
      'correct a line; all lines together make 100 %',
    );
  else if (short.gt(tolerance))
    complain(
      `the lines sum to ${most}${percentText(high)}: ${percentText(short)} is missing`,
      'correct a line, or give the line that takes the rest `amount: balance`',
    );
}

function batchWithoutDensity(
  { at, path, excerpt, name }: Composition,
  batch: BatchSize,
  basis: Basis,
): Diagnostic {
  const common = { severity: 'error', code: 'batch-size', at, path, excerpt } as const;
  return basis === 'volume'
    ? { ...common, message: `${name}: the batch of a gas must be a volume, not \`${batch.written}\`` }
    : {
        ...common,
        message: `${name}: the batch is \`${batch.written}\`, a volume, and the density of the whole is not given`,
        hint: 'add its density, or give the batch as a weight',
      };
}

/**
 * Percentages are parts of 100, so weights that stand beside them and a balance are read per 100 of their unit.
 * Grams of that batch, or null where no line is in percent or the weights are not all in one unit.
 */
function hundredOfUnit(lines: readonly FormulaLine[], weighed: readonly FormulaLine[]): Fraction | null {
  if (!lines.some(({ amount }) => amount.kind === 'percent')) return null;
  const units = new Set(
    weighed.map(({ amount }) => (amount.kind === 'mass' ? unitOf(amount.written) : null)),
  );
  const [unit] = units;
  if (units.size !== 1 || !unit) return null;
  const size = readMeasure(`100 ${unit}`, 'mass');
  return size.ok ? size.value.base.exact : null;
}

const unitOf = (written: string): string => splitMeasure(written)?.unit ?? '';

function perHundred({ name }: Composition, line: FormulaLine): Diagnostic {
  const written = 'written' in line.amount ? line.amount.written : '';
  return {
    ...lineError(
      line,
      'batch-size-assumed',
      `${name}: \`${written}\` is read per 100 ${unitOf(written)} of batch, because percentages stand beside it and no batch size is given`,
      'add the batch size to the record, such as `batch: 945 kg`, if the weights are of another batch',
    ),
    severity: 'warning',
  };
}

function balanceWithoutBatch(
  composition: Composition,
  weighed: readonly FormulaLine[],
  balance: FormulaLine,
): Diagnostic {
  const { amount } = weighed[0]!;
  const written = 'written' in amount ? amount.written : '';
  const more = weighed.length > 1 ? ` and ${weighed.length - 1} more` : '';
  return {
    ...lineError(
      balance,
      'batch-size-missing',
      `${composition.name}: \`${written}\`${more} cannot be turned into percent, because the size of the whole batch is not known: ${lineName(balance)} is given as the balance`,
      'add the batch size to the record (`batch: 945 kg`), or give every line in percent, or give the balance line its amount',
    ),
  };
}
