/** Categories of acute toxicity, the most severe first; a basis has the first four or all (Table A.1.1; UN GHS Table 3.1.1). */
export const acuteCategories = ['1', '2', '3', '4', '5'] as const;
