import { lanesOf, type Scale, scaleOf } from './_scale.ts';
import { type Drawn, draw } from './_svg.ts';
import { answerOf } from './answer.ts';
import type { Headroom, Step } from './headroom.ts';
import { rangeText, stateText } from './headroom-text.ts';
import { shortText } from './percent-text.ts';

const WIDTH = 960;
const LEFT = 250;
const RIGHT = WIDTH - 30;
const ROW = 24;
const LANE = 15;
const LETTER = 7.2;
const MAX_LETTERS = 32;

const inks = {
  Danger: { fill: '#a61b1b', text: '#ffffff' },
  Warning: { fill: '#f0b400', text: '#000000' },
  none: { fill: '#dfe7e2', text: '#000000' },
} as const;
const HAZARD = '#3f4a56';
const GRID = '#9aa3ab';
const NOW = '#0b57d0';

/**
 * Breakpoints as a strip chart in SVG: a band of signal words over a row for every hazard, along the percent of the
 * constituent, with the present percent marked. Its description says all that the drawing shows.
 * @param product name for the title.
 */
export function stripChart(headroom: Headroom, product: string): string {
  const { of, basis, domain, steps, current, others } = headroom;
  const end = domain[1].valueOf();
  const edges = steps.slice(1).map(({ from }) => from);
  const scale = scaleOf(
    [...edges, ...current].map(each => each.valueOf()),
    end,
    LEFT,
    RIGHT,
  );
  const labels = distinct(edges.map(shortText)).map(text => ({
    text,
    at: scale.at(Number(text)),
    width: text.length * LETTER,
  }));
  const lanes = lanesOf(labels);
  const top = 76 + LANE * (Math.max(-1, ...lanes) + 1);
  const hazards = distinct(steps.flatMap(({ state }) => state.hazards));
  const bottom = top + ROW * (hazards.length + 1) + 6;
  const height = bottom + 58;
  const title = `${of.name} in ${product}: hazards by concentration`;
  const under = `${basis.title}, as of ${basis.asOf}; ${others === 'water' ? 'water makes up the balance' : 'all others in proportion'}`;
  const described = [
    answerOf(headroom),
    ...steps.map(step => `${rangeText(step, domain)}: ${stateText(step.state)}`),
  ];
  const root = draw(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${height}`,
      width: WIDTH,
      height,
      role: 'img',
      'aria-labelledby': 'headroom-title headroom-description',
      'font-family': 'system-ui, "Liberation Sans", Arial, sans-serif',
      'font-size': 12,
    },
    draw('title', { id: 'headroom-title' }, `${title}; ${under}`),
    draw('desc', { id: 'headroom-description' }, described.join('\n')),
    draw('rect', { width: WIDTH, height, fill: '#ffffff' }),
    draw('text', { x: 14, y: 26, 'font-size': 16, 'font-weight': 600 }, fitted(title, 92)),
    draw('text', { x: 14, y: 44 }, under),
    ...labels.flatMap(({ text, at }, i) => [
      draw('line', {
        x1: at,
        x2: at,
        y1: top - 4 - LANE * lanes[i]!,
        y2: bottom,
        stroke: GRID,
        'stroke-width': 0.75,
      }),
      draw('text', { x: at, y: top - 8 - LANE * lanes[i]!, 'text-anchor': 'middle' }, text),
    ]),
    draw('text', { x: 14, y: top + 16, 'font-weight': 600 }, 'Signal word'),
    ...steps.flatMap(step => signalBand(step, scale, top)),
    ...hazards.flatMap((hazard, i) => hazardRow(hazard, steps, scale, top + ROW * (i + 1))),
    ...axis(scale, end, bottom),
    ...nowMark(headroom, scale, top, bottom),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root.svg}`;
}

function signalBand({ from, to, state }: Step, scale: Scale, y: number): Drawn[] {
  const word = state.label ? state.label.signalWord : null;
  const ink = inks[word ?? 'none'];
  const text = state.label ? [word ?? 'none', ...state.label.pictograms].join(' ') : '';
  const { x, width } = extent(from.valueOf(), to.valueOf(), scale);
  const shown = [text, word ?? ''].find(each => each.length * LETTER + 8 <= width) ?? '';
  const band = draw('rect', {
    x,
    y,
    width,
    height: ROW - 3,
    fill: ink.fill,
    stroke: '#ffffff',
    'stroke-width': 0.75,
  });
  if (shown === '') return [band];
  return [
    band,
    draw('text', { x: x + width / 2, y: y + 15, 'text-anchor': 'middle', fill: ink.text }, shown),
  ];
}

function hazardRow(hazard: string, steps: readonly Step[], scale: Scale, y: number): Drawn[] {
  const bars = steps
    .filter(({ state }) => state.hazards.includes(hazard))
    .map(({ from, to }) =>
      draw('rect', {
        ...extent(from.valueOf(), to.valueOf(), scale),
        y: y + 4,
        height: ROW - 10,
        fill: HAZARD,
      }),
    );
  return [
    draw('text', { x: 14, y: y + 15 }, draw('title', {}, hazard), fitted(hazard, MAX_LETTERS)),
    ...bars,
  ];
}

/** Place of a range; a single value is drawn as a narrow bar. */
function extent(from: number, to: number, scale: Scale): { x: number; width: number } {
  const [x, end] = [scale.at(from), scale.at(to)];
  return { x, width: Math.max(end - x, 2) };
}

function axis(scale: Scale, end: number, y: number): Drawn[] {
  const ends = scale.decades.some(decade => scale.at(end) - scale.at(decade) < 24) ? [] : [end];
  const ticks = [0, ...scale.decades, ...ends];
  return [
    draw('line', { x1: LEFT, x2: RIGHT, y1: y, y2: y, stroke: '#000000' }),
    ...ticks.flatMap(tick => [
      draw('line', { x1: scale.at(tick), x2: scale.at(tick), y1: y, y2: y + 5, stroke: '#000000' }),
      draw(
        'text',
        { x: scale.at(tick), y: y + 18, 'text-anchor': 'middle' },
        String(Number(tick.toPrecision(5))),
      ),
    ]),
    draw('text', { x: 14, y: y + 18 }, 'percent, on a logarithmic scale'),
  ];
}

function nowMark({ current: [low, high] }: Headroom, scale: Scale, top: number, bottom: number): Drawn[] {
  const [from, to] = [scale.at(low.valueOf()), scale.at(high.valueOf())];
  const text = low.equals(high)
    ? `now ${shortText(high)} %`
    : `now ${shortText(low)} to ${shortText(high)} %`;
  const room = (text.length * LETTER) / 2;
  const x = Math.min(Math.max((from + to) / 2, LEFT + room), RIGHT - room);
  const line = (at: number) =>
    draw('line', { x1: at, x2: at, y1: top - 4, y2: bottom + 26, stroke: NOW, 'stroke-width': 2 });
  return [
    ...(to > from
      ? [
          draw('rect', {
            x: from,
            y: top - 4,
            width: to - from,
            height: bottom - top + 4,
            fill: NOW,
            'fill-opacity': 0.15,
          }),
        ]
      : []),
    line(from),
    ...(to > from ? [line(to)] : []),
    draw('text', { x, y: bottom + 42, 'text-anchor': 'middle', fill: NOW, 'font-weight': 600 }, text),
  ];
}

const distinct = (texts: readonly string[]): string[] => [...new Set(texts)];

const fitted = (text: string, letters: number): string =>
  text.length <= letters ? text : `${text.slice(0, letters - 1)}…`;
