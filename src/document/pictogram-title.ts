import symbols from '../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import type { PictogramCode } from '../labelling/label-elements.ts';

const NAMES = new Map(Object.entries(symbols.symbols).map(([name, { code }]) => [code, name]));

/** What a pictogram shows, as the standard names its symbol: `skull and crossbones`. */
export const pictogramTitle = (code: PictogramCode): string => (NAMES.get(code) ?? '').replaceAll('-', ' ');
