import { sumWords } from '../sum-words.ts';
import { judgedAt, withSource } from './measured.ts';

const gases: Readonly<Record<string, string>> = {
  EUH029: 'libera gases tóxicos con agua',
  EUH031: 'libera gases tóxicos con ácidos',
  EUH032: 'libera gases muy tóxicos con ácidos',
};

/** Sums of ingredients. */
export const { sum, ratios } = sumWords({
  rules: {
    'corrosive-and-irritant': 'suma de componentes corrosivos e irritantes',
    'irritant-mild': 'suma de componentes irritantes para la categoría 3',
    'corrosive-and-damaging': 'suma de componentes corrosivos para la piel y que causan lesiones oculares',
    'damaging-and-irritating': 'suma de componentes que causan lesiones e irritación oculares',
    'respiratory-irritation': 'suma de componentes que irritan las vías respiratorias',
    'narcotic-effects': 'suma de componentes con efectos narcóticos',
    aspiration: 'suma de componentes tóxicos por aspiración',
    'pyrophoric-gases': 'gases pirofóricos de una mezcla sin datos propios',
    lead: 'plomo, como metal',
    cyanoacrylates: 'cianoacrilatos',
    'chromium-in-cement': 'cromo (VI) soluble por peso de cemento',
    cement: 'cemento',
    isocyanates: 'isocianatos',
    'epoxy-listed': 'componentes epoxídicos',
    epoxy: 'componentes epoxídicos',
    'active-chlorine': 'cloro activo',
    cadmium: 'cadmio',
    'highly-flammable-beside-halogenated': 'muy inflamable junto a hidrocarburos halogenados',
    'flammable-beside-halogenated': 'inflamable junto a hidrocarburos halogenados',
    'titanium-dioxide': 'dióxido de titanio',
    'toxic-by-eye-contact': 'contiene una sustancia tóxica en contacto con los ojos',
    'dries-skin': 'sustancias que secan la piel',
    'corrosive-to-respiratory-tract': 'contiene una sustancia corrosiva para las vías respiratorias',
    'has-statement': 'contiene una sustancia con esta indicación',
  },
  corrosive: category => `suma de componentes corrosivos${category === null ? '' : ` para la ${category}`}`,
  aquatic: category => `suma para la categoría ${category}`,
  gasOf: code => gases[code ?? ''] ?? '',
  byOwnLimit: 'cada uno por su propio límite',
  byVolume: 'en volumen',
  viscosity: 'viscosidad cinemática a 40',
  viscosityMissing: (property, limit) => `${property} no indicada (límite ${limit})`,
  measured: (property, value, style, show) => withSource(judgedAt(property, value, style, show), value),
});
