/** What is said of counts and of the looks at a lot: verdicts, and how many stones more. */
export const counts: Record<string, string> = {
  // The sizes of a lot.
  '{n#} stones by {method!way}: {sizes*size}.': '{n} piedras por {method}: {sizes}.',
  '{n#} stones in all: {sizes*size}.': '{n} piedras en total: {sizes}.',
  'Largest stone seen: {size#} by tape.': 'Piedra más grande vista: {size}, con cinta.',
  'Largest stone seen: {size#} by its ends ({low#} to {high#}).':
    'Piedra más grande vista: {size} por sus extremos (de {low} a {high}).',

  // The verdict on a lot.
  'Every limit of {class} is shown to be kept at {confidence!share} confidence, all at once.':
    'Se demuestra que se cumplen todos los límites de {class} a la vez, con {confidence} de confianza.',
  'Accept the lot; keep the measured pile as the reference.':
    'Acepte el lote; conserve el acopio medido como referencia.',
  '{class} is broken at {confidence!share} confidence: {limits*limit}.':
    'No se cumple {class}, con {confidence} de confianza: {limits}.',
  'See what this rock means for each zone, and the remedies.':
    'Vea qué significa esta roca para cada zona, y las medidas correctivas.',
  'By estimate inside {class}; not yet decided at {confidence!share} confidence: {limits*limit}.':
    'Según la estimación, dentro de {class}; aún sin decidir con {confidence} de confianza: {limits}.',
  'By estimate outside {class}; not yet decided at {confidence!share} confidence: {limits*limit}.':
    'Según la estimación, fuera de {class}; aún sin decidir con {confidence} de confianza: {limits}.',
  'The class and the measurement are stated on different bases.':
    'La clase y la medición no se refieren a lo mismo (número o masa).',
  'Limit by limit, each by itself; the outcome above speaks for all of them at once.':
    'Límite por límite, cada uno por sí solo; el resultado de arriba vale para todos a la vez.',
  'This look could not be turned into a curve.':
    'Esta observación no se pudo convertir en una curva.',
  'Mend the entry named above.': 'Corrija la anotación que se indica arriba.',
  'Do the looks agree?': '¿Concuerdan las observaciones?',
  'The looks at {lot} differ by more than chance would allow at {confidence!share} confidence, so they are not put together.':
    'Las observaciones de {lot} difieren más de lo que permite el azar con {confidence} de confianza; por eso no se reúnen.',
  'Look whether the pile is segregated or one look was taken from other rock; then judge the parts as lots of their own.':
    'Vea si el acopio está segregado o si una observación es de otra roca; luego evalúe las partes como lotes aparte.',
  'The looks contradict one another.': 'Las observaciones se contradicen.',
  'Find out why before the lot is judged.': 'Averigüe por qué antes de evaluar el lote.',
  'No look at {lot} could be used.': 'No se pudo usar ninguna observación de {lot}.',
  'Count 100 stones on a grid over the whole pile.':
    'Cuente 100 piedras en una cuadrícula sobre todo el acopio.',
  'Decided at {owner!risk} and {producer!risk}.': 'Se decide con {owner} y {producer}.',
  'Measure only on a face that has been made safe: piles and loose stones slide and fall, and machines have blind sides.':
    'Mida solo en una cara que se haya asegurado: los acopios y las piedras sueltas se deslizan y caen, y las máquinas tienen lados ciegos.',

  // What would decide.
  'More stones will hardly decide: the rock lies on a limit.':
    'Más piedras difícilmente decidirán: la roca está en un límite.',
  'Counting alone will not help: it would take about {n#} stones, because the rock lies close to a limit. See the remedies.':
    'Contar no bastará: harían falta unas {n} piedras, porque la roca está cerca de un límite. Vea las medidas correctivas.',
  'Measure about {more#} stones more, {all#} in all: that decides if the shares stay as they are.':
    'Mida unas {more} piedras más, {all} en total: eso decide si las proporciones siguen así.',
  'More photos alone will not decide: what is left is the error of scale and factors, or the largest and smallest stones.':
    'Más fotos no decidirán: lo que queda es el error de la escala y de los factores, o las piedras más grandes y más chicas.',
  'Take about {n#} photos more like these ({stones#} stones): that decides if the shares stay as they are.':
    'Tome unas {n} fotos más como estas ({stones} piedras): eso decide si las proporciones siguen así.',
  'Or count {n#} stones on a grid: they would decide by themselves.':
    'O cuente {n} piedras en una cuadrícula: decidirían por sí solas.',
  'Measure the largest stone with a tape.': 'Mida con cinta la piedra más grande.',

  // A count that stops as soon as it may.
  'The count may stop: every limit is accepted.':
    'El conteo puede terminar: se aceptan todos los límites.',
  'Stop counting and keep the list of stones.': 'Deje de contar y guarde la lista de piedras.',
  'The count may stop: the rock is turned away by {limits*limit}.':
    'El conteo puede terminar: la roca se rechaza por {limits}.',
  'Stop counting; see the remedies.': 'Deje de contar; vea las medidas correctivas.',
  'Turned away is rock that is not good: it does not keep the limit with what good rock has in reserve. Whether the limit itself is kept, and how sure that is, the verdict on the lot says.':
    'Se rechaza la roca que no es buena: no cumple el límite con la reserva que tiene la roca buena. Si cumple el límite mismo, y con qué seguridad, lo dice el veredicto sobre el lote.',
  'Go on counting: {limit!limit} is still open.': 'Siga contando: falta decidir {limit}.',
  'Go on counting: {n#} limits are still open.': 'Siga contando: faltan {n} límites por decidir.',
  'Pick the next stones on the grid, and look again after each.':
    'Tome las piedras siguientes en la cuadrícula y vuelva a mirar tras cada una.',
  'Only these lines allow to look after every stone: whoever stops at the first moment at which a count of fixed length would do is mistaken more often than stated.':
    'Solo estas líneas permiten mirar tras cada piedra: quien para en el primer momento en que bastaría un conteo de largo fijo se equivoca más a menudo de lo indicado.',
  '{limit!limit}: {wrong#} of {n#} stones {than!than}; {accept!decision}, {turn!decision}: {decided!decision}.':
    '{limit}: {wrong} de {n} piedras con tamaño {than}; {accept}, {turn}: {decided}.',
  '{limit!limit}: {wrong#} of {n#} stones {than!than}; {accept!decision}, {turn!decision}: {decided!decision}, since stone {stone#}.':
    '{limit}: {wrong} de {n} piedras con tamaño {than}; {accept}, {turn}: {decided}, desde la piedra {stone}.',
  'State larger risks, or a larger share by which rock is good.':
    'Indique riesgos mayores, o una proporción mayor que distinga a la roca buena.',
  '{limit!limit}: {n#} stones, at most {most#} of them smaller than it.':
    '{limit}: {n} piedras, a lo sumo {most} de ellas menores.',
  '{limit!limit}: {n#} stones, at most {most#} of them larger than it.':
    '{limit}: {n} piedras, a lo sumo {most} de ellas mayores.',
  '{n#} stones decide every limit of {class} at the stated risks when all are counted; {limit!limit} asks for most.':
    '{n} piedras deciden todos los límites de {class} con los riesgos indicados cuando se cuentan todas; {limit} es el que más pide.',
  'Count on a grid over the whole pile, one by one: the sequential plan usually ends sooner.':
    'Cuente en una cuadrícula sobre todo el acopio, una por una: el plan secuencial suele terminar antes.',
};
