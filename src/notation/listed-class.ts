const together: Readonly<Record<string, string>> = {
  'Skin Corr.': 'Skin Corr./Irrit.',
  'Skin Irrit.': 'Skin Corr./Irrit.',
  'Eye Dam.': 'Eye Dam./Irrit.',
  'Eye Irrit.': 'Eye Dam./Irrit.',
  'Unst. Expl.': 'Expl.',
};

/**
 * The class under which a hazard class is judged and listed: skin and eye have one each for damage and irritation,
 * unstable explosives are explosives (B.1.2; CLP and UN 2.1).
 */
export const listedClass = (hazardClass: string): string => together[hazardClass] ?? hazardClass;
