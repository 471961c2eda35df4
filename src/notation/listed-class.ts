import { findClass, hazardClasses } from './classes.ts';

/**
 * The class under which a hazard class is judged and listed: skin and eye have one each for damage and irritation,
 * unstable explosives are explosives (B.1.2; CLP and UN 2.1).
 */
export const listedClass = (hazardClass: string): string => findClass(hazardClass)?.listed ?? hazardClass;

/** The hazard classes that are listed under a name, the more severe first; none where it names none. */
export const classesListedAs = (listed: string): readonly string[] =>
  hazardClasses.map(entry => entry.class).filter(name => listedClass(name) === listed);
