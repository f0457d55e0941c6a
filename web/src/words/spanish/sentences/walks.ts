/** How placed work stands: states of checks, surveys of layers, what is not as designed. */
export const walks: Record<string, string> = {
  '{n#} checks from the design of the zone: {pass#} pass, {fail#} fail, {open#} not yet known.':
    '{n} verificaciones según el diseño de la zona: {pass} cumplen, {fail} no cumplen, {open} aún no se saben.',
  'The work is held at: {check!check}.': 'La obra espera en: {check}.',
  'Nonconformances not closed: {names}.': 'No conformidades sin cerrar: {names}.',
  'hold point': 'punto de espera',

  // What to do next.
  'Keep the record.': 'Conserve el registro.',
  'Keep the record with the findings.': 'Conserve el registro con los hallazgos.',
  'See to "{check!check}" first: it stands before this hold point.':
    'Atienda primero «{check}»: va antes de este punto de espera.',
  'It fails and no nonconformance says so: open one, and stop what would cover it.':
    'No cumple y ninguna no conformidad lo dice: abra una, y detenga lo que lo cubriría.',
  'Carry out what its nonconformance says, look again, then close it.':
    'Haga lo que dice su no conformidad, mire de nuevo y luego ciérrela.',
  'Its nonconformance is closed, but no later look shows that it passes: look again.':
    'Su no conformidad está cerrada, pero nada posterior muestra que cumple: mire de nuevo.',
  'Measure {n#} more points.': 'Mida {n} puntos más.',
  'Ask the designer for the recipe: a mix of the zone with the parts of each material.':
    'Pida la receta al proyectista: una mezcla de la zona con las partes de cada material.',
  'Proportions that would fit are proposed where a mix names its materials.':
    'Donde una mezcla nombra sus materiales se proponen proporciones adecuadas.',
  'Loads tallied until then are kept.': 'Los viajes contados hasta entonces se conservan.',
  'Survey the layer at about {n#} points: as many as give its mean to within a tenth, where thickness varies by a fifth (common practice, no source).':
    'Levante la capa en unos {n} puntos: los que dan su media con un error de un décimo cuando el espesor varía en un quinto (práctica común, sin fuente).',
  'Look: {how!}.': 'Mire: {how}.',
  'Looked at on {when}, before the hold point "{check!check}" was released: open it up again, or have the engineer say how it is shown.':
    'Visto el {when}, antes de liberarse el punto de espera «{check}»: ábralo otra vez, o que el ingeniero diga cómo se demuestra.',
  '{check!check}: {next!}': '{check}: {next}',

  // What was seen.
  'photo {photo}': 'foto {photo}',

  // A surveyed layer.
  '{n#} points: mean {mean#}, at least {low#} at the asked confidence, thinnest {least#}; {asked#} is asked for.':
    '{n} puntos: media {mean}, al menos {low} con la confianza pedida, mínimo {least}; se piden {asked}.',
  'A point is thinner than the least thickness of {least#}.':
    'Un punto es más delgado que el espesor mínimo de {least}.',
  'Add rock round the thin points, then measure there again.':
    'Agregue roca alrededor de los puntos delgados y mida allí de nuevo.',
  'Add rock where the layer is thin, then measure again.':
    'Agregue roca donde la capa es delgada y mida de nuevo.',
  'Measure more points: {n#} give the mean to within a tenth of the layer.':
    'Mida más puntos: {n} dan la media con un error de un décimo de la capa.',
  'Measure more points.': 'Mida más puntos.',
  'Keep the survey with the record.': 'Conserve el levantamiento con el registro.',

  // Reasons of a check.
  'Tolerance: {tolerance!}': 'Tolerancia: {tolerance}',
  'Tolerance: {tolerance!}.': 'Tolerancia: {tolerance}.',
  'Measured by: {how!}': 'Se mide con: {how}',
  'Measured by: {how!}.': 'Se mide con: {how}.',
  'Measured at {n#} points or more (common practice, no source).':
    'Se mide en {n} puntos o más (práctica común, sin fuente).',
  'Hold point': 'Punto de espera',
  '{material}: {n#} loads, where {wanted#} go with the rock so far; {allowed#} off is allowed.':
    '{material}: {n} viajes, cuando a la roca hasta ahora le tocan {wanted}; se admite errar por {allowed}.',
  '{required!required}: {state!state}.': '{required}: {state}.',

  // What is not as designed.
  'Not as designed: {about}.': 'No está según el diseño: {about}.',
  'Not as designed: {zone}, check "{check}".':
    'No está según el diseño: {zone}, verificación «{check}».',
  'Opened by {who} on {when}.': 'Abierta por {who} el {when}.',
  'To do: {what!disposition}, by {who} on {when}.': 'Por hacer: {what}, según {who} el {when}.',
  'To do: {what!disposition}, by {who} on {when}, approved by {engineer}.':
    'Por hacer: {what}, según {who} el {when}, con la aprobación de {engineer}.',
  'Closed by {who} on {when}.': 'Cerrada por {who} el {when}.',
  "Say what is done: rework, remove and replace, use as is with the engineer's approval, or measure further. Nothing may cover it before.":
    'Diga qué se hará: rehacer, retirar y reemplazar, usar tal como está con la aprobación del ingeniero, o medir más. Antes, nada puede cubrirlo.',
  'Do it, look again with photos, then close it.':
    'Hágalo, mire de nuevo con fotos y luego ciérrela.',
  'Keep it with the record.': 'Consérvelo con el registro.',
};
