/** Words that stand in the sentences of walks, each in a place of its own. */
import { checkStates, checkTitles } from '../engine_words';

/** Titles of checks. */
export const check: Record<string, string> = {
  ...checkTitles,
  'Thickness of {layer}': 'Espesor de {layer}',
  'Gradation of {layer}': 'Granulometría de {layer}',
};

/** How a check stands. */
export const state: Record<string, string> = {
  ...checkStates,
  'pass, but not released: "{check!check}" before it is open':
    'cumple, pero no está liberado: «{check}», que va antes, sigue abierto',
  'used as it is, approved by {who}': 'se usa tal como está, con la aprobación de {who}',
};

/** Where somebody looked, with what, and which photos were taken. */
export const seenWith: Record<string, string> = {
  '{where}': '{where}',
  'with {tool}': 'con {tool}',
  'photo {photo}': 'foto {photo}',
  '{where}, {rest!seenWith}': '{where}, {rest}',
  'with {tool}, {rest!seenWith}': 'con {tool}, {rest}',
  'photo {photo}, {rest!seenWith}': 'foto {photo}, {rest}',
};

/** Who looked, when, where and with what. */
export const entry: Record<string, string> = {
  '{look_}, {who}, {when@}': '{look}, {who}, {when}',
  '{look_}, {who}, {when@}, {rest!seenWith}': '{look}, {who}, {when}, {rest}',
};

/** Loads that were counted. */
export const tally: Record<string, string> = {
  '{n#} load of {material}': '{n} viaje de {material}',
  '{n#} loads of {material}': '{n} viajes de {material}',
};

/** What a survey of the layer comes to. */
export const survey: Record<string, string> = {
  '{n#} points: mean {mean#}, at least {low#} at the asked confidence, thinnest {least#}; {asked#} is asked for.':
    '{n} puntos: media {mean}, al menos {low} con la confianza pedida, mínimo {least}; se piden {asked}.',
};

/** What is done about work that is not as designed. */
export const disposition: Record<string, string> = {
  rework: 'rehacer',
  'remove and replace': 'retirar y reemplazar',
  'use as is': 'usar tal como está',
  'measure further': 'medir más',
};

/** What is said first of what was seen at a check. */
export const seenFirst: Record<string, string> = {
  ...state,
  ...tally,
  '{state!state}.': '{state}.',
  '{loads!tally}.': '{loads}.',
};

/** What is said after that; what is none of it somebody noted. */
export const seenNext: Record<string, string> = {
  ...tally,
  '{loads!tally}.': '{loads}.',
  'measured {lengths*}': 'medido {lengths}',
  'measured {lengths*}.': 'medido {lengths}.',
  'photo {photo}': 'foto {photo}',
  'photo {photo}.': 'foto {photo}.',
  '{note_}': '{note}',
};

/** What was seen at a check. */
export const evidence: Record<string, string> = {
  '{seen!entry}: {first!seenFirst}': '{seen}: {first}',
  '{seen!entry}: {first!seenFirst}; {next;seenNext}': '{seen}: {first}; {next}',
  '{seen!entry}: {state!state}. {survey!survey}': '{seen}: {state}. {survey}',
};
