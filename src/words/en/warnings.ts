import supplemental from '../../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };
import { unitOf } from '../../classify/facts/figure.ts';
import type { OpenQuestion } from '../../classify/facts/open-question.ts';
import type { Warning } from '../../classify/facts/warning.ts';
import type { BridgingFault, EvidenceFault } from '../../classify/facts/warning-evidence.ts';
import { plain, type Style } from '../../quantity/print.ts';
import type { Telling } from '../words.ts';
import { because, extremePhText } from './because.ts';
import { carcinogenListed } from './carcinogens.ts';
import {
  entryAnswerUnused,
  entryChosen,
  entryLater,
  entryNotes,
  notYet,
  recordReplacesEntry,
} from './entries.ts';
import { evidenceConflict } from './evidence-conflict.ts';
import { openPoint } from './open-points.ts';
import { notToMix, reactive } from './reactions.ts';
import { gasOf } from './sums.ts';

/** What a reviewer must know, in a sentence. */
export function warning(found: Warning, tell: Telling): string {
  switch (found.id) {
    case 'no-data': {
      const entry = found.later
        ? `no harmonised entry in force (${notYet(found.later)})`
        : 'no harmonised entry';
      return `${tell.names(found.constituent)}${found.cas ? ` (CAS ${found.cas})` : ''}: no hazards in the record and ${entry}; every endpoint without a value is unknown`;
    }
    case 'record-replaces-entry':
      return recordReplacesEntry(found, tell);
    case 'entry-chosen':
      return entryChosen(found, tell);
    case 'entry-later':
      return entryLater(found, tell);
    case 'carcinogen-listed':
      return carcinogenListed(found, tell);
    case 'entry-answer-unused':
      return entryAnswerUnused(found, tell);
    case 'entry-notes':
      return entryNotes(found, tell);
    case 'no-source':
      return `${tell.names(found.constituent)}: \`hazards: []\` without a source; name what it rests on`;
    case 'minimum-classification':
      return `${tell.names(found.constituent)}: harmonised entry ${found.index} gives a minimum classification (*) for ${found.codes.join(', ')}; data may show a more severe category`;
    case 'ate-contradicts-category': {
      const { key, value, category, listed } = found;
      const lies = category ? `lies in Category ${category}` : 'lies above the last category';
      return `${tell.names(found.constituent)}: the acute toxicity estimate (${key}) ${tell.style.show(value.value)} ${unitOf[key]} ${lies}, and Category ${listed} is listed; the estimate is used`;
    }
    case 'stot-other-organ': {
      const about = found.organs.length > 0 ? found.organs.join(', ') : 'an organ that is not named';
      return `${found.class}: ${tell.style.show(found.amount.value)} % ${tell.names(found.constituent)} gives Category 2 for ${about}; the mixture is given Category 1 alone, and whether Category 2 is told as well is for the reviewer`;
    }
    case 'stot-organ-missing':
      return `${found.class}: no organ is known for ${tell.names(found.constituent)}; the statement says "organs", since a list of those of other ingredients (${found.organs.join(', ')}) would read as complete`;
    case 'carcinogen-label-optional':
      return `${found.constituents.map(tell.names).join(', ')}: Carc. 2 below ${tell.style.show(found.below)} %: the data sheet must say so, the label warning is optional`;
    case 'evidence-not-used':
      return evidenceNotUsed(found, tell);
    case 'reserve-to-be-confirmed':
      return `${extremePhText(found, tell)} ${found.stands ? `stands for ${partOf(found.part)}: evidence on reserve alone lifts no Category 1; other data must confirm that the mixture does no such damage` : `is set aside for ${partOf(found.part)} by evidence on reserve alone; other data must confirm that the mixture does no such damage`}`;
    case 'evidence-conflict':
      return evidenceConflict(found, tell);
    case 'inhalation-form-worse':
    case 'stale-measurement':
    case 'open-cup':
    case 'ph-missing':
    case 'undecided-with-cause':
    case 'doubtful-measurement':
    case 'category-not-in-basis':
      return openPoint(found, tell);
    case 'boiling-point-missing':
      return `flash point below ${tell.style.show(found.below)} ${tell.style.celsius} and no initial boiling point: Flam. Liq. 1 is not excluded`;
    case 'near-limit': {
      const { total, limit, unit } = found.figure;
      return `${found.class}${found.route ? ` (${found.route})` : ''}: ${tell.style.show(total)} ${unit} lies close to the limit ${tell.style.show(limit)} ${unit}; batch tolerance may change the class`;
    }
    case 'reactive-constituents':
      return reactive(found, tell);
    case 'reactive-alone':
      return notToMix(found, tell);
    case 'respiratory-tract':
      return 'toxic by inhalation and corrosive to skin: consider whether the mixture corrodes the respiratory tract; where that kills, its hazard statement and the corrosion pictogram are due, else STOT SE tells it';
    case 'us-specific-limits':
      return `${found.class}: with the specific concentration limits of EU law the mixture would be ${found.within.replaceAll('-', ' ')} instead of ${found.now.replaceAll('-', ' ')} (${because(found.because, tell).working}); choose reading us-specific-limits to use them`;
    case 'supplemental-open': {
      const { rule, working } = because(found.because, tell);
      return `${found.code} is due if ${openText(found.open, found.code)} (${rule}: ${working})`;
    }
  }
}

const partOf = (part: 'skin' | 'eye'): string => (part === 'skin' ? 'skin' : 'eyes');

function evidenceNotUsed(
  { class: name, method, source, why }: Extract<Warning, { id: 'evidence-not-used' }>,
  tell: Telling,
) {
  const about = `evidence on ${name}`;
  switch (why.kind) {
    case 'no-reason':
      return `${about} has no reason and is not used`;
    case 'cannot-lower':
      return `${about} cannot lower the class`;
    case 'earlier-entry':
    case 'no-route':
    case 'no-effect':
    case 'no-such-class':
      return `${about} (${method}; ${source}) is not used: ${faultText(why)}`;
    default:
      return `${about} is not used: ${bridgingFault(why, tell.style).message}`;
  }
}

function faultText(why: Exclude<EvidenceFault, BridgingFault>): string {
  switch (why.kind) {
    case 'earlier-entry':
      return 'an earlier entry speaks of the same class';
    case 'no-route':
      return 'it names no route';
    case 'no-effect':
      return 'it names no effect (respiratory irritation or narcotic effects)';
    case 'no-such-class':
      return `${why.basis} has no such class`;
    case 'no-reason':
      return 'it has no reason';
    case 'cannot-lower':
      return 'it cannot lower the class';
  }
}

/** Why bridged evidence cannot be used, with what would hold. */
export function bridgingFault(
  fault: BridgingFault,
  style: Style = plain,
): { readonly message: string; readonly hint?: string } {
  const shown = 'principle' in fault ? `the bridging principle \`${fault.principle}\`` : '';
  switch (fault.kind) {
    case 'no-principle':
      return { message: `no bridging principle holds for ${fault.class}` };
    case 'principle-not-for-class':
      return {
        message: `${shown} does not hold for ${fault.class}`,
        hint: `for ${fault.class} there are ${fault.others.join(', ')}`,
      };
    case 'principle-for-category':
      return { message: `${shown} holds for results in Category ${fault.category} only` };
    case 'principle-for-form':
      return { message: `${shown} holds for products of the form ${fault.form} only` };
    case 'diluted-too-far':
      return {
        message: `${style.show(fault.total)} % of ingredients of ${fault.class}, less than the ${style.show(fault.least)} % that bridging by \`dilution\` needs`,
      };
  }
}

function openText(open: OpenQuestion, code: string): string {
  switch (open) {
    case 'titaniumDioxideAnnulled':
      return `the paragraph applies although ${supplemental.titaniumDioxide.annulment}`;
    case 'gasRelease':
      return `the mixture itself ${gasOf(code)} in dangerous amounts`;
    case 'skinDryness':
      return 'repeated exposure to the mixture may cause skin dryness or cracking';
    case 'corrosiveMechanism':
      return 'the mechanism of toxicity by inhalation is corrosivity';
    case 'mayBeInhaled':
      return 'the mixture may be inhaled and there are no inhalation data';
    case 'askedByEntry':
      return supplemental.askedByEntry.statements.find(statement => statement.code === code)!.asks;
    default:
      return supplemental[open].asks;
  }
}
