/** Rock sizes, classes, the layer and its own roughness. */
export const design: Record<string, string> = {
  'Asks for {size!requiredSize}; {class} has at least {has#}: margin {margin#}.':
    'Pide {size}; {class} tiene al menos {has}: holgura {margin}.',
  'Asks for {size!requiredSize}; {class} does not state one.': 'Pide {size}; {class} no lo indica.',
  'For comparison only; it does not govern.': 'Solo para comparar; no rige.',
  'Nothing to do.': 'Nada que hacer.',
  "The zone stands outside this method's published range.":
    'La zona está fuera del rango publicado de este método.',
  'Judge it by another.': 'Evalúela con otro.',
  'Settle the inputs that this method takes by default, or judge by another.':
    'Fije los datos que este método toma por omisión, o evalúe con otro.',
  'Choose a larger class, or change the water or the slope.':
    'Elija una clase mayor, o cambie el agua o el talud.',
  'Give the class a limit at this percentage, or choose a class that has one.':
    'Dé a la clase un límite en este porcentaje, o elija una clase que lo tenga.',
  'Read the sizes side by side before one of them is believed.':
    'Compare los tamaños entre sí antes de creer en uno.',
  'Within their published range: {inside#}.': 'Dentro de su rango publicado: {inside}.',
  'Outside it, shown but never governing: {outside#}.':
    'Fuera de él, mostrados pero sin regir nunca: {outside}.',
  'Silent: {silent#}.': 'Sin respuesta: {silent}.',
  '{n#} more are made for other places than {place!place}.':
    'Otros {n} son para otros lugares y no para {place}.',
  '{n#} of {all#} families have a class that holds here.':
    '{n} de {all} familias tienen una clase que aquí resiste.',
  'Specify a class that the quarries at hand make.':
    'Especifique una clase que produzcan las canteras a mano.',
  'No published class is enough: change the lining or the water.':
    'Ninguna clase publicada basta: cambie el revestimiento o el agua.',
  '{method!method} governs in the {case} ({policy!policy}); it asks for {size!requiredSize}.':
    '{method} rige en {case} ({policy}); pide {size}.',
  'The smallest class of this family that holds is {class}.':
    'La clase menor de esta familia que resiste es {class}.',
  'No class of this family holds.': 'Ninguna clase de esta familia resiste.',
  'Nothing to do; {class} would hold too.': 'Nada que hacer; {class} también resistiría.',
  'Specify {class}.': 'Especifique {class}.',
  'Rock of this family is not enough: change the lining or the water.':
    'La roca de esta familia no basta: cambie el revestimiento o el agua.',
  'No sizing method speaks for this zone within its published range.':
    'Ningún método de tamaño vale para esta zona dentro de su rango publicado.',
  'Ask the designer which method governs here.': 'Pregunte al proyectista qué método rige aquí.',

  '{specified#} is specified; at least {needed#} is needed, governed by {rule!layerRule}.':
    'Se especifican {specified}; hacen falta al menos {needed}, por {rule}.',
  'Draw the layer {thickness#} thick.': 'Dibuje la capa con {thickness} de espesor.',
  'The least thickness could not be found.': 'No se pudo hallar el espesor mínimo.',
  'Give the class its largest stone.': 'Indique la piedra más grande de la clase.',

  'With the low roughness of its own rock (n {n#}) the water runs at {velocity#} and {method!method} asks for {size!requiredSize}; {class} has {has#}.':
    'Con la rugosidad baja de su propia roca (n {n}) el agua corre a {velocity} y {method} pide {size}; {class} tiene {has}.',
  'One size balances.': 'Un solo tamaño se equilibra.',
  'With the high roughness of {class} (n {n#}) it stands at {level#}, {change#} lower than over the ground as surveyed.':
    'Con la rugosidad alta de {class} (n {n}) llega a la cota {level}, {change} más baja que sobre el terreno levantado.',
  'With the high roughness of {class} (n {n#}) it stands at {level#}, {change#} higher than over the ground as surveyed.':
    'Con la rugosidad alta de {class} (n {n}) llega a la cota {level}, {change} más alta que sobre el terreno levantado.',
  'That is above the top of the zone at {level#}.': 'Eso pasa de lo alto de la zona, en {level}.',
  'Carry the rock higher, or show that water above it does no harm.':
    'Lleve la roca más arriba, o demuestre que el agua por encima no hace daño.',
  'Choose a larger class: this one quickens the water it must stand in.':
    'Elija una clase mayor: esta acelera el agua que debe resistir.',
  'Nothing to do; set freeboard on the higher level.':
    'Nada que hacer; dé el borde libre sobre el nivel más alto.',

  'Rock goes {up#} upstream and {down#} downstream beyond what it protects, {thickness#} thick over the last {length#} at each end.':
    'La roca sigue {up} aguas arriba y {down} aguas abajo de lo que protege, con {thickness} de espesor en los últimos {length} de cada extremo.',
  "Key both ends into the bank, and between them at most every {spacing#}: {depth#} deep from the layer's surface, {width#} wide at the bottom, {rock#} of rock each.":
    'Empotre ambos extremos en la margen con dentellones, y entre ellos a lo sumo cada {spacing}: {depth} de profundidad desde la superficie de la capa, {width} de ancho en el fondo, {rock} de roca cada uno.',
  'Over the stretch that is drawn that makes {n#} keys.':
    'En el trecho dibujado son {n} dentellones.',
  'Draw both ends of the zone and its keys; the document does not say where they lie.':
    'Dibuje ambos extremos de la zona y sus dentellones; el documento no dice dónde están.',

  'The toe goes {depth#} below the bed, or an apron {width#} wide and {thickness#} thick lies in its place.':
    'El pie va {depth} bajo el lecho, o en su lugar hay un delantal de {width} de ancho y {thickness} de espesor.',
  'The toe as drawn goes down {depth#}.': 'El pie dibujado baja {depth}.',
  'Survey the bed before the toe after storms.':
    'Levante el lecho delante del pie después de los temporales.',

  'In the {case}, D{p#} of {size#} moves with a chance of {chance!share} (sampled: {sampled!share}, ± {error#}).':
    'En {case}, un D{p} de {size} se mueve con una probabilidad de {chance} (por muestreo: {sampled}, ± {error}).',
  '{what!variable} matters most ({share#} of the variance).':
    'Lo que más importa es {what} ({share} de la varianza).',
  '{what!variable} matters most ({share#} of the variance), then {others*variableShare}.':
    'Lo que más importa es {what} ({share} de la varianza); luego {others}.',
  '{share#} is accepted.': 'Se acepta {share}.',
  'Choose a larger class, or learn more about what matters most and state it anew.':
    'Elija una clase mayor, o averigüe más de lo que más importa e indíquelo de nuevo.',
  'State the chance that the owner accepts in this flood, and compare designs.':
    'Indique la probabilidad que el dueño acepta en esta crecida, y compare diseños.',
};
