import { fire } from './sheet-fire.ts';
import { firstAid } from './sheet-first-aid.ts';
import { handling } from './sheet-handling.ts';
import { other } from './sheet-other.ts';
import { reactivity } from './sheet-reactivity.ts';

/** Sentences for the shop floor, by their id in hazard-data/sheet/advice.json. */
export const advice = { ...firstAid, ...fire, ...handling, ...reactivity, ...other } as const;
