import { findClass, hazardClasses } from './classes.ts';
import type { TransientEffect } from './hazard.ts';

const effects: readonly TransientEffect[] = ['respiratory irritation', 'narcotic effects'];

/** Category 3 of STOT SE is judged and listed by its effect (A.8.2.2; CLP and UN 3.8.2.2): `STOT SE 3 (narcotic effects)`. */
export const listedByEffect = (effect: TransientEffect): string => `STOT SE 3 (${effect})`;

const effectByName = new Map(effects.map(effect => [listedByEffect(effect), effect]));

/** The effect that a class as listed is about; undefined where it is about none. */
export const effectOf = (listed: string): TransientEffect | undefined => effectByName.get(listed);

/**
 * The class under which a hazard class is judged and listed: skin and eye have one each for damage and irritation,
 * unstable explosives are explosives (B.1.2; CLP and UN 2.1).
 */
export const listedClass = (hazardClass: string): string => findClass(hazardClass)?.listed ?? hazardClass;

/** The hazard classes that are listed under a name, the more severe first; none where it names none. */
export const classesListedAs = (listed: string): readonly string[] =>
  hazardClasses.map(entry => entry.class).filter(name => listedClass(name) === listed);
