import type { PalletLoad } from '../../logistics/pallet.ts';
import { both, bothMasses, counted, plain } from './lengths.ts';

const LIMITS: Readonly<Record<PalletLoad['limitedBy'], string>> = {
  height: 'a further layer would be too high',
  load: 'a further layer would be too heavy for the pallet',
  asked: 'as asked for',
  'too-large': 'the case is larger than the pallet',
};

/** The load of a pallet, a line each. */
export function palletLines(load: PalletLoad): string[] {
  const source = load.maxHeight.source === null ? '' : ` (${load.maxHeight.source})`;
  return [
    `pallet ${load.pallet.name}: ${load.perLayer} cases a layer, ${load.layers} layers, ${counted(load.cases)} cases; ${LIMITS[load.limitedBy]}`,
    `height ${both(load.height)} of ${both(load.maxHeight.value)}${source}`,
    load.mass === null ? 'mass not known' : `mass ${bothMasses(load.mass)} with the pallet`,
    `the layer covers ${plain(load.covers * 100, 0)} % of the pallet`,
    `pallet: ${load.pallet.source}`,
  ];
}

/** Words of the drawing of a pallet. */
export const palletCaptions = (load: PalletLoad, name: string) => ({
  title: `${name}: ${counted(load.cases)} cases on ${load.pallet.name}`,
  layer: `layer: ${load.perLayer} cases`,
  side: `${load.layers} layers, ${both(load.height)} high${load.mass === null ? '' : `, ${bothMasses(load.mass)}`}`,
  length: both(load.pallet.length),
  width: both(load.pallet.width),
});
