import type { LabelElements } from '../../../src/labelling/label-elements.ts';
import type { Die } from '../../../src/layout/die/die.ts';
import { corrosive, mild, type SampleOptions, severe, withLeads } from './sample.ts';

const nothing: LabelElements = {
  ...mild,
  signalWord: null,
  pictograms: [],
  hazardStatements: [],
  precautionaryStatements: [],
};

const flammable: LabelElements = {
  ...mild,
  signalWord: 'Danger',
  pictograms: ['GHS02', 'GHS08', 'GHS07', 'GHS09'],
  hazardStatements: [
    { code: 'H225', text: 'Highly flammable liquid and vapor.' },
    { code: 'H304', text: 'May be fatal if swallowed and enters airways.' },
    { code: 'H315', text: 'Causes skin irritation.' },
    { code: 'H336', text: 'May cause drowsiness or dizziness.' },
    { code: 'H411', text: 'Toxic to aquatic life with long lasting effects.' },
  ],
  precautionaryStatements: withLeads([
    {
      code: 'P210',
      group: 'prevention',
      text: 'Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.',
    },
    { code: 'P240', group: 'prevention', text: 'Ground and bond container and receiving equipment.' },
    { code: 'P273', group: 'prevention', text: 'Avoid release to the environment.' },
    ...corrosive.precautionaryStatements.filter(({ code }) => ['P264', 'P271', 'P280'].includes(code)),
    {
      code: 'P370+P378',
      group: 'response',
      text: 'In case of fire: Use CO2, dry powder or foam to extinguish.',
    },
    { code: 'P391', group: 'response', text: 'Collect spillage.' },
    ...corrosive.precautionaryStatements.filter(({ group }) => group !== 'prevention'),
  ]),
};

/** Long statements without end: nine of hazard. */
const ninefold: LabelElements = {
  ...severe,
  pictograms: ['GHS02', 'GHS05', 'GHS06', 'GHS08', 'GHS09'],
  hazardStatements: [
    ...severe.hazardStatements,
    { code: 'H317', text: 'May cause an allergic skin reaction.' },
    { code: 'H350', text: 'May cause cancer (inhalation).' },
    { code: 'H361', text: 'Suspected of damaging fertility or the unborn child.' },
  ],
};

/** A name of 73 letters. */
export const LONG_NAME = 'Brightline Heavy Duty Alkaline Floor Stripper and Degreaser Concentrate X';

/** Contents of 0 to 9 hazard statements, with long and short names. All invented. */
export const CONTENTS: Readonly<Record<string, SampleOptions>> = {
  'no hazard': { elements: nothing },
  'one hazard': { elements: mild },
  'one hazard, long name': { elements: mild, name: LONG_NAME },
  corrosive: { elements: corrosive },
  'corrosive, long name': { elements: corrosive, name: LONG_NAME },
  flammable: { elements: flammable, name: 'Brightline' },
  severe: { elements: severe },
  'nine statements': { elements: ninefold, name: 'Solvent 9' },
};

const rectangle = (width: number, height: number, cornerRadius = 3): Die => ({ width, height, cornerRadius });
const oval = (width: number, height: number): Die => ({ width, height, cornerRadius: 0, shape: 'oval' });

/** Outlines from 40 x 30 to 150 x 250 mm. */
export const DIES: Readonly<Record<string, Die>> = {
  '40x30': rectangle(40, 30, 2),
  '60x40': rectangle(60, 40, 2),
  '100x70': rectangle(100, 70),
  '101.6x76.2': rectangle(101.6, 76.2),
  '110x125': rectangle(110, 125),
  '130x120': rectangle(130, 120),
  '75x130': rectangle(75, 130),
  '150x250': rectangle(150, 250, 5),
  'wrap 276x90': { ...rectangle(276, 90), overlap: 8 },
  'square corners 120x100': rectangle(120, 100, 0),
  'round 100': oval(100, 100),
  'round corners 100': rectangle(100, 100, 50),
  'oval 160x110': oval(160, 110),
  'half side 130x120': rectangle(130, 120, 60),
};
