/** Sentences of section 4 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const firstAid = {
  'eyes-long':
    'Rinse for 15 minutes or longer, also under the eyelids, and go on rinsing on the way to medical care.',
  'eyes-rinse':
    'Rinse with plenty of water for 15 minutes, holding the eyelids apart. Take out contact lenses if that is easy. If irritation stays, get medical advice.',
  'eyes-gas': 'Move to fresh air. If irritation stays, rinse with lukewarm water and get medical advice.',
  'skin-wash':
    'Wash with soap and water. Take off soiled clothing and wash it before it is worn again. If irritation starts, get medical advice.',
  'skin-fluoride':
    'Contains {names}: pain may start hours later. Rinse at once with much water, put on calcium gluconate gel where it is at hand, and get medical help also without pain.',
  'inhalation-air': 'Move to fresh air. If coughing, dizziness or other trouble follows, get medical advice.',
  'ingestion-rinse':
    'Rinse the mouth with water. Do not make the person vomit. Give nothing by mouth to a person who is drowsy or unconscious. Get medical advice.',
  'ingestion-gas': 'Swallowing a gas is unlikely.',
  'ingestion-methanol':
    'Get medical help at once, also if the person feels well: {names} acts with a delay of hours.',
  'ingestion-glycol':
    'Get medical help at once, also if the person feels well: {names} acts with a delay of hours.',
  'symptoms-methanol':
    '{names}: headache, dizziness and vomiting; then, often after 12 to 24 hours without trouble, disturbed or lost vision and acid blood.',
  'symptoms-glycol':
    '{names}: first like drunkenness, later, within one to three days, trouble of heart, lungs and kidneys.',
  'symptoms-fluoride':
    '{names}: deep burns whose pain may start hours later; low calcium in the blood can disturb the heart.',
  'medical-attention-methanol':
    'Note to physician: contains {names}. Watch the acid-base balance and vision also before symptoms start. Fomepizole or ethanol slows the formation of formic acid; consider folinic acid and hemodialysis.',
  'medical-attention-glycol':
    'Note to physician: contains {names}. Watch the acid-base balance and the kidneys also before symptoms start. Consider fomepizole or ethanol, and hemodialysis.',
  'medical-attention-fluoride':
    'Note to physician: contains {names}. Watch calcium and heart rhythm; calcium gluconate as gel on the skin, by inhalation or injected as the case asks.',
  'medical-attention-aspiration':
    'Note to physician: liquid in the airways can cause pneumonia. Watch the person for 24 to 48 hours, also without symptoms.',
  'medical-attention-corrosive':
    'Note to physician: corrosive. After swallowing judge the risk of perforation before a tube is passed or the stomach is emptied.',
  'medical-attention-symptoms': 'Treat according to symptoms. Show this sheet to the physician.',
} as const;
