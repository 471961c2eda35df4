import type { other as english } from '../en/sheet-other.ts';
import { fire } from './sheet-fire.ts';
import { firstAid } from './sheet-first-aid.ts';
import { handling } from './sheet-handling.ts';
import { reactivity } from './sheet-reactivity.ts';

/** Sentences of sections 1, 2 and 12. */
const other: Readonly<Record<keyof typeof english, string>> = {
  'restriction-mixing': 'No mezclar con otros productos.',
  'restriction-flame': 'No usar cerca de llamas, chispas o superficies calientes.',
  'restriction-burns': 'No dejar que trapos, papel, madera o ropa se empapen y se sequen.',
  'restriction-aluminum': 'No usar sobre aluminio ni cinc.',
  'other-dryness': 'El contacto repetido puede secar y agrietar la piel: {names}.',
  'other-peroxides': 'Puede formar peróxidos explosivos si le llega aire durante mucho tiempo: {names}.',
  'other-vapor':
    'Durante el uso, el vapor puede formar con el aire una mezcla inflamable o explosiva: {names}.',
  'effects-ph-low':
    'Ácido: un vertido sin diluir baja el pH del agua y daña a los seres vivos que la habitan.',
  'effects-ph-high':
    'Alcalino: un vertido sin diluir sube el pH del agua y daña a los seres vivos que la habitan.',
  'effects-ozone': 'Daña la capa de ozono: {names}.',
  'effects-film': 'Flota en el agua o se adhiere al suelo y al sedimento: {names}.',
  'effects-oxygen': 'Un vertido grande consume el oxígeno del agua mientras se degrada: {names}.',
};

/** Sentences for the shop floor, by their id in hazard-data/sheet/advice.json. */
export const advice = { ...firstAid, ...fire, ...handling, ...reactivity, ...other };
