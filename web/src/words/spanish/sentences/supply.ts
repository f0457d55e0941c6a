/** Loads as they come, submittals, other rock, quantities. */
export const supply: Record<string, string> = {
  '{n#} loads so far: {mass#} from {source}.': '{n} viajes hasta ahora: {mass} de {source}.',
  'How much is planned is not stated.': 'No se indica cuánto se prevé.',
  'State the planned mass of the lot.': 'Indique la masa prevista del lote.',
  'That is {share#} of {mass#}.': 'Eso es el {share} de {mass}.',
  '{mass#} are still to come.': 'Faltan por llegar {mass}.',
  'Every load has its own ticket and its mass.': 'Cada viaje tiene su boleta y su masa.',
  'Tickets or masses are missing or stand twice.': 'Faltan boletas o masas, o están dos veces.',
  'Ask the driver or the quarry for them now.': 'Pídalas ahora al chofer o a la cantera.',
  '{n#} loads with a size show no drift from {size#}.':
    '{n} viajes con tamaño no muestran deriva desde {size}.',
  '{n#} loads with a size are too few to speak of a drift.':
    '{n} viajes con tamaño son muy pocos para hablar de una deriva.',
  'The supply has become {how!drift}: alarm at {load} of {all#} ({name}), drift since about {since}; loads since then have a median size of {size#} on average.':
    'El suministro se ha vuelto {how}: alarma en {load} de {all} ({name}), deriva desde {since} más o menos; los viajes desde entonces tienen en promedio un tamaño mediano de {size}.',
  'Take the median size of each load.': 'Tome el tamaño mediano de cada viaje.',
  'Go on.': 'Siga.',
  'Look at the face and the screen at the quarry; count a load of now before placing more.':
    'Mire el frente y la criba de la cantera; cuente un viaje de ahora antes de colocar más.',
  'From {n#} loads {share#} of the lot have a median size from {from#} to {to#}.':
    'Según {n} viajes, el {share} del lote tiene un tamaño mediano de {from} a {to}.',
  'Measure the median size of more loads.': 'Mida el tamaño mediano de más viajes.',
  'Ask the designer what the contract provides, and see the remedies.':
    'Pregunte al proyectista qué prevé el contrato, y vea las medidas correctivas.',

  // Two piles, two sides, one load.
  '{one} D50 {size#}, {other} D50 {others#}: no difference shows.':
    '{one} D50 {size}, {other} D50 {others}: no se ve diferencia.',
  '{one} D50 {size#}, {other} D50 {others#}: they differ.':
    '{one} D50 {size}, {other} D50 {others}: difieren.',
  'With the same rock so large a difference has a chance of {chance#}.':
    'Con la misma roca una diferencia tan grande tiene una probabilidad de {chance}.',
  'Go on; compare again through the work.': 'Siga; compare de nuevo durante la obra.',
  'The pile is segregated: mix it from both sides before loading out, then count again.':
    'El acopio está segregado: mézclelo desde ambos lados antes de cargar y cuente de nuevo.',
  'Set this load aside and count the next one before it is dumped.':
    'Aparte este viaje y cuente el siguiente antes de descargarlo.',

  // Submittals.
  '{submittal}: {test!rockTest}': '{submittal}: {test}',
  '{submittal}: certified gradation': '{submittal}: granulometría certificada',
  '{submittal}: specific gravity against the design':
    '{submittal}: densidad relativa frente al diseño',
  'Handed in: {results*result}.': 'Presentado: {results}.',
  'Limits kept: {kept#}, not kept: {broken#}, not spoken of: {silent#}.':
    'Límites que se cumplen: {kept}, que no: {broken}, sin resultado: {silent}.',
  'The submittal holds no result of this test: {test!rockTest} ({standards_}).':
    'La presentación no trae resultado de este ensayo: {test} ({standards}).',
  'Ask the supplier for this test: {test!rockTest} ({standards_}).':
    'Pida al proveedor este ensayo: {test} ({standards}).',
  'The design took {design#} for this source; the submittal shows {shown#}.':
    'El diseño tomó {design} para esta procedencia; la presentación muestra {shown}.',
  'The certified curve keeps every limit of {class}.':
    'La curva certificada cumple todos los límites de {class}.',
  'Judge every lot that comes all the same.': 'Evalúe de todos modos cada lote que llega.',
  'Rock of {source} for {class}, handed in on {when@}: {n#} of {all#} questions are settled in its favour.':
    'Roca de {source} para {class}, presentada el {when}: {n} de {all} preguntas están resueltas a su favor.',
  'Rock of {source} for {class}, handed in on {when@} by {who_}: {n#} of {all#} questions are settled in its favour.':
    'Roca de {source} para {class}, presentada el {when} por {who}: {n} de {all} preguntas están resueltas a su favor.',
  'See what stands open: {submittal}: {test!rockTest}.':
    'Vea lo que queda abierto: {submittal}: {test}.',
  'Accept the source; go on judging every lot.': 'Acepte la procedencia; siga evaluando cada lote.',

  // Other rock.
  'The margin of the stones goes from {from#} to {to#}.':
    'La holgura de las piedras pasa de {from} a {to}.',
  'Nothing to change: the other rock leaves no less.':
    'Nada que cambiar: la otra roca no deja menos.',
  'The layer as drawn is too thin for its stones.':
    'La capa dibujada es demasiado delgada para sus piedras.',
  'Class and layer may stay.': 'La clase y la capa pueden quedar.',

  // Quantities.
  '{amounts;amount}.': '{amounts}.',
  'Cost: {cost}.': 'Costo: {cost}.',
  'Hold the amounts against the drawings before ordering.':
    'Compare las cantidades con los planos antes de pedir.',
  'Nothing can be counted yet.': 'Aún no se puede computar nada.',
};

/** How a supply changes. */
export const drift: Record<string, string> = { coarser: 'más gruesa', finer: 'más fina' };

export const loadName: Record<string, string> = {
  'ticket {ticket}': 'la boleta {ticket}',
  'load {load}': 'el nombre {load}',
};

/** A result of a test, as handed in. */
export const result: Record<string, string> = {
  '{share#} with magnesium sulfate in {n#} cycles': '{share} con sulfato de magnesio en {n} ciclos',
  '{share#} with sodium sulfate in {n#} cycles': '{share} con sulfato de sodio en {n} ciclos',
  '{share#} in {n#} cycles': '{share} en {n} ciclos',
  '{share#} above {ratio#}:1': '{share} por encima de {ratio}:1',
};

export const rockTest: Record<string, string> = {
  'Specific gravity': 'Densidad relativa',
  Absorption: 'Absorción',
  'Loss in sulfate soundness': 'Pérdida en sanidad por sulfatos',
  'Loss in Los Angeles abrasion': 'Pérdida en abrasión Los Ángeles',
  'Loss in freezing and thawing': 'Pérdida por hielo y deshielo',
  'Loss in micro-Deval': 'Pérdida en micro-Deval',
  'Point load index Is50': 'Índice de carga puntual Is50',
  'Compressive strength of cores': 'Resistencia a compresión de núcleos',
  'Share of slender stones': 'Proporción de piedras esbeltas',
  'Length over thickness of the most slender stone':
    'Longitud sobre espesor de la piedra más esbelta',
};

/** An item of the bill. */
export const billItem: Record<string, string> = {
  'Area on the slope': 'Área sobre el talud',
  'Rock of the layer, {class}, in place': 'Roca de la capa, {class}, en obra',
  'Rock of the toe, {class}, in place': 'Roca del pie, {class}, en obra',
  'Rock, {class}, in place': 'Roca, {class}, en obra',
  'Rock, {class}, ordered': 'Roca, {class}, a pedir',
  'Loads of {class}, {truck}': 'Viajes de {class}, {truck}',
  'Bedding, {material}, ordered': 'Capa de apoyo, {material}, a pedir',
  'Excavation, as it lies': 'Excavación, en banco',
  'Topsoil, in place': 'Suelo vegetal, en obra',
  'Blanket, with what lies in trenches': 'Manta, con lo que va en zanjas',
  'Rolls of blanket': 'Rollos de manta',
  'Stakes of the blanket': 'Estacas de la manta',
  'Geotextile with its overlaps': 'Geotextil con sus traslapes',
  'Fill, {material}, loose, ordered': 'Relleno, {material}, suelto, a pedir',
  'Fill, {material}, as it lies in the ground': 'Relleno, {material}, en banco',
  'Fill, loose, ordered': 'Relleno, suelto, a pedir',
  'Fill of {mix}, in place': 'Relleno de {mix}, en obra',
};

export const amount: Record<string, string> = {
  '{item!billItem}: {amount#}': '{item}: {amount}',
};
