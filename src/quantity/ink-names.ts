/**
 * Names that no spot ink may have: those of the process inks, and of all inks and none (ISO 32000-1 8.6.6.4; ISO
 * 19593-1 6.3.3 for a cut line, second-hand).
 */
export const RESERVED_INKS: readonly string[] = ['All', 'None', 'Cyan', 'Magenta', 'Yellow', 'Black'];
