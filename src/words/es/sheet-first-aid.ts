import type { firstAid as english } from '../en/sheet-first-aid.ts';

/** Sentences of section 4 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const firstAid: Readonly<Record<keyof typeof english, string>> = {
  'eyes-long':
    'Enjuagar durante 15 minutos o más, también debajo de los párpados, y seguir enjuagando durante el traslado al médico.',
  'eyes-rinse':
    'Enjuagar con agua abundante durante 15 minutos, con los párpados separados. Quitar las lentes de contacto si resulta fácil. Si la irritación persiste, consultar a un médico.',
  'eyes-gas':
    'Llevar a la persona al aire libre. Si la irritación persiste, enjuagar con agua tibia y consultar a un médico.',
  'skin-wash':
    'Lavar con agua y jabón. Quitar la ropa manchada y lavarla antes de volver a usarla. Si aparece irritación, consultar a un médico.',
  'skin-fluoride':
    'Contiene {names}: el dolor puede empezar horas después. Enjuagar de inmediato con mucha agua, aplicar gel de gluconato de calcio si se dispone de él y buscar asistencia médica aunque no haya dolor.',
  'inhalation-air':
    'Llevar a la persona al aire libre. Si aparecen tos, mareo u otras molestias, consultar a un médico.',
  'ingestion-rinse':
    'Enjuagar la boca con agua. No provocar el vómito. No dar nada por la boca a una persona somnolienta o inconsciente. Consultar a un médico.',
  'ingestion-gas': 'No es probable que se ingiera un gas.',
  'ingestion-methanol':
    'Buscar asistencia médica de inmediato, aunque la persona se sienta bien: {names} actúa con un retraso de horas.',
  'ingestion-glycol':
    'Buscar asistencia médica de inmediato, aunque la persona se sienta bien: {names} actúa con un retraso de horas.',
  'symptoms-methanol':
    '{names}: dolor de cabeza, mareo y vómitos; después, a menudo tras 12 a 24 horas sin molestias, visión alterada o pérdida de la vista y acidosis.',
  'symptoms-glycol':
    '{names}: al principio como una embriaguez; después, de uno a tres días, trastornos del corazón, los pulmones y los riñones.',
  'symptoms-fluoride':
    '{names}: quemaduras profundas cuyo dolor puede empezar horas después; el calcio bajo en la sangre puede alterar el corazón.',
  'medical-attention-methanol':
    'Nota para el médico: contiene {names}. Vigilar el equilibrio ácido-base y la visión también antes de que aparezcan síntomas. El fomepizol o el etanol frenan la formación de ácido fórmico; considerar ácido folínico y hemodiálisis.',
  'medical-attention-glycol':
    'Nota para el médico: contiene {names}. Vigilar el equilibrio ácido-base y los riñones también antes de que aparezcan síntomas. Considerar fomepizol o etanol, y hemodiálisis.',
  'medical-attention-fluoride':
    'Nota para el médico: contiene {names}. Vigilar el calcio y el ritmo cardíaco; gluconato de calcio en gel sobre la piel, inhalado o inyectado según el caso.',
  'medical-attention-aspiration':
    'Nota para el médico: el líquido en las vías respiratorias puede causar neumonía. Mantener a la persona en observación de 24 a 48 horas, también sin síntomas.',
  'medical-attention-corrosive':
    'Nota para el médico: corrosivo. Tras la ingestión, valorar el riesgo de perforación antes de introducir una sonda o vaciar el estómago.',
  'medical-attention-symptoms': 'Tratar según los síntomas. Mostrar esta ficha al médico.',
};
