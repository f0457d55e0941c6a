/** Soils, filters and the layers on them. */
export const filters: Record<string, string> = {
  '{soil} is {group!soilGroup}.': '{soil} es {group}.',
  // No soil, though it could be read as one.
  'The usual face is 1V:1.5H.': 'La cara usual es 1V:1.5H.',

  'Bare rock, and the design shows neither a filter nor the soil below it: soil may wash out through the rock.':
    'Roca desnuda, y el diseño no muestra ni un filtro ni el suelo de abajo: el suelo puede lavarse a través de la roca.',
  "Go to the designer with the soil's data: its gradation, liquid limit and plasticity index; or state the filter.":
    'Lleve al proyectista los datos del suelo: su granulometría, límite líquido e índice de plasticidad; o indique el filtro.',
  'The rock is filled: the fill is the filter, and no bedding is needed below it.':
    'La roca está rellena: el relleno es el filtro, y no hace falta capa de apoyo debajo.',
  'Fill every void down to the soil; where rock stays bare, lay a filter.':
    'Llene todos los vacíos hasta el suelo; donde la roca queda desnuda, ponga un filtro.',
  'Soil, filter and rock agree, layer on layer.':
    'Suelo, filtro y roca concuerdan, capa sobre capa.',
  '{upper} on {lower}: D15/d85 is {middle#} in the middle and {worst#} at the worst, where less than {most#} is allowed; D15/d15 is {fine#}.':
    '{upper} sobre {lower}: D15/d85 es {middle} en el medio y {worst} en el peor caso, cuando se admite menos de {most}; D15/d15 es {fine}.',
  '{upper} on {lower}: its D15 of {from#} to {to#} must lie between {least#}, to let the water out, and {most#}, to hold the soil (category {category#}).':
    '{upper} sobre {lower}: su D15 de {from} a {to} debe estar entre {least}, para que salga el agua, y {most}, para retener el suelo (categoría {category}).',
  '{upper} on {lower}: its D15 of {size#} must lie between {least#}, to let the water out, and {most#}, to hold the soil (category {category#}).':
    '{upper} sobre {lower}: su D15 de {size} debe estar entre {least}, para que salga el agua, y {most}, para retener el suelo (categoría {category}).',
  'It holds in the middle of the bands, not at their edges.':
    'Se cumple en el medio de las bandas, no en sus bordes.',
  'See which filters would serve.': 'Vea qué filtros servirían.',
  '{layer} is {thickness#} thick; at least {least#} is asked.':
    '{layer} tiene {thickness} de espesor; se piden al menos {least}.',
  '{layer} is {thickness#} thick; at least {least#} is asked, placed under water.':
    '{layer} tiene {thickness} de espesor; se piden al menos {least}, colocada bajo el agua.',
  'Make the layer {thickness#} thick.': 'Haga la capa de {thickness} de espesor.',
  'Have the soil sieved and give its gradation.':
    'Haga tamizar el suelo e indique su granulometría.',
  'Choose one and state it as the filter of the zone.':
    'Elija uno e indíquelo como filtro de la zona.',

  // Filled rock.
  '{n#} parts of {rock} to {m#} part of {fill} by loose volume.':
    '{n} partes de {rock} por {m} parte de {fill}, en volumen suelto.',
  '{n#} parts of {rock} to {m#} parts of {fill} by loose volume.':
    '{n} partes de {rock} por {m} partes de {fill}, en volumen suelto.',
  'It fills {share#} of the voids.': 'Llena {share} de los vacíos.',
  'The rest stays open, and what lies under the rock can wash out through it.':
    'El resto queda abierto, y lo que está bajo la roca puede lavarse a través de ella.',
  'By volume the fill fits, but mixed before placing it holds the rock apart by {ratio#}, where {most#} is usual at most.':
    'En volumen el relleno cabe, pero mezclado antes de colocar separa la roca por {ratio}, cuando lo usual es {most} a lo sumo.',
  'Wash the fill into rock that already lies, which leaves its contact, or mix in less.':
    'Meta el relleno con agua en la roca ya colocada, lo que conserva su contacto, o mezcle menos.',
  'No whole buckets, at most {n#} to a batch, fill {share#} of the voids and leave the stones touching: what fills them holds the rock apart by {ratio#} at least, where {most#} is usual at most.':
    'Ningún número entero de cucharones, a lo sumo {n} por tanda, llena {share} de los vacíos y deja que las piedras se toquen: lo que los llena separa la roca al menos por {ratio}, cuando lo usual es {most} a lo sumo.',
  'Of those that leave them touching this fills most.':
    'De los que las dejan tocarse, este es el que más llena.',
  'Fill at least {share#} of the voids, or put bedding under the rock as under bare rock.':
    'Llene al menos {share} de los vacíos, o ponga una capa de apoyo bajo la roca como bajo roca desnuda.',
  'Internally unstable by {criteria}.': 'Internamente inestable según {criteria}.',
  'Have the rock sieved below its smallest stated size, or offer sizes between rock and fill; cover the face of the layer until plants hold the fill.':
    'Haga tamizar la roca por debajo de su menor tamaño indicado, u ofrezca tamaños entre la roca y el relleno; cubra la cara de la capa hasta que las plantas sujeten el relleno.',
};

/** What a soil is. */
export const soilGroup: Record<string, string> = {
  'GW, well-graded gravel': 'GW, grava bien graduada',
  'GP, poorly graded gravel': 'GP, grava mal graduada',
  'GM, silty gravel': 'GM, grava limosa',
  'GC, clayey gravel': 'GC, grava arcillosa',
  'SW, well-graded sand': 'SW, arena bien graduada',
  'SP, poorly graded sand': 'SP, arena mal graduada',
  'SM, silty sand': 'SM, arena limosa',
  'SC, clayey sand': 'SC, arena arcillosa',
  'ML, silt': 'ML, limo',
  'CL, lean clay': 'CL, arcilla magra',
  'CH, fat clay': 'CH, arcilla grasa',
  'MH, elastic silt': 'MH, limo elástico',
};
