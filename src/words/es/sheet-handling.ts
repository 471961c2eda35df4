import type { handling as english } from '../en/sheet-handling.ts';

/** Sentences of sections 6 to 8 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const handling: Readonly<Record<keyof typeof english, string>> = {
  'release-ignition':
    'Apagar las llamas y eliminar toda fuente de ignición antes de cualquier otra cosa. Ventilar. Abandonar la zona donde se acumule vapor.',
  'release-slip': 'El líquido derramado vuelve resbaladizo el suelo.',
  'release-people':
    'Mantener alejadas a las demás personas. Evitar el contacto y no respirar vapores, nieblas ni polvo. Evitar que el producto llegue a desagües y aguas.',
  'clean-flammable':
    'Recoger con arena, tierra u otro absorbente incombustible y con herramientas que no produzcan chispas. Guardar en recipientes cerrados.',
  'clean-oxidizer':
    'No recoger con serrín, papel ni trapos: pueden inflamarse. Diluir con mucha agua o recoger con arena, y no devolver nunca al recipiente.',
  'clean-acid':
    'Recoger con arena, tierra u otro absorbente inerte. Si el producto no contiene nada que reaccione con él, los restos pequeños pueden neutralizarse despacio con carbonato de sodio: se desprenden calor y gas. Enjuagar con agua.',
  'clean-alkali':
    'Recoger con arena, tierra u otro absorbente inerte. Enjuagar los restos con mucha agua. No neutralizar con ácido sin saber qué contiene el producto.',
  'clean-dust': 'Recoger en seco sin levantar polvo: con aspirador de filtro fino, o barriendo en húmedo.',
  'clean-gas': 'Detener la fuga si puede hacerse sin peligro. Ventilar hasta que el gas se disipe.',
  'clean-absorb':
    'Recoger con arena, tierra u otro absorbente inerte, guardar en recipientes cerrados y enjuagar el suelo con agua.',
  'handling-hygiene':
    'Evitar el contacto con los ojos, la piel y la ropa. No comer, beber ni fumar durante el trabajo. Lavarse las manos antes de las pausas y al terminar.',
  'handling-bond':
    'Mantener alejadas las llamas, las chispas y las superficies calientes. Conectar a tierra los recipientes al trasvasar. Ventilar, también a ras de suelo.',
  'handling-dust': 'No levantar polvo.',
  'handling-mixing': 'No mezclar nunca con otros productos: puede formarse gas tóxico.',
  'storage-closed':
    'Mantener cerrado en el envase original, en posición vertical, en lugar fresco y seco, lejos de los alimentos y fuera del alcance de los niños.',
  'storage-heat': 'Proteger del sol y del calor; asegurar las botellas de gas contra caídas.',
  'storage-vented':
    'Usar recipientes con respiradero. No encerrar nunca producto que se haya sacado antes del envase.',
  'storage-acid': 'Separado de álcalis, lejía, sulfuros, cianuros y metales.',
  'storage-alkali': 'Separado de ácidos, sales de amonio, aluminio y cinc.',
  'storage-fire': 'Lejos de fuentes de ignición y de comburentes.',
  'engineering-explosion': 'Donde puedan acumularse vapores: material eléctrico para atmósferas explosivas.',
  'engineering-exhaust':
    'Extracción localizada, o ventilación general suficiente para mantener el aire por debajo de los límites de esta sección.',
  'engineering-eyewash': 'Lavaojos y ducha de seguridad donde se manipule el producto.',
  'engineering-dust': 'Extraer el polvo donde se forme.',
  'engineering-general': 'Buena ventilación general; más donde se formen nieblas o vapores.',
  'eyes-goggles':
    'Gafas de protección química herméticas; además, pantalla facial donde el producto pueda salpicar.',
  'eyes-glasses':
    'Gafas de seguridad con protección lateral; gafas herméticas donde el producto pueda salpicar.',
  'hands-aqueous': 'En general, nitrilo, neopreno o caucho butílico para ácidos y álcalis en agua.',
  'hands-solvent':
    'No usar caucho natural: los disolventes lo atraviesan. Nitrilo o caucho butílico, según el disolvente.',
  'hands-maker':
    'Guantes resistentes a productos químicos. El tiempo de penetración depende del material y del espesor: elegirlos según los datos del fabricante de los guantes para los componentes de la sección 3 y cambiarlos a tiempo.',
  'skin-apron':
    'Delantal, manguitos y botas resistentes a productos químicos donde el producto pueda salpicar.',
  'skin-clothing': 'Ropa de trabajo de manga larga y calzado cerrado.',
  'respiratory-limits':
    'Si la ventilación no mantiene el aire por debajo de los límites de esta sección, un equipo respiratorio elegido y usado según 29 CFR 1910.134.',
};
