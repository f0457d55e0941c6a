/** What a typical section shows, part by part. */

/** How it is looked at. */
export const sectionView: Record<string, string> = {
  'slope {slope#}, from the toe up': 'talud {slope}, del pie hacia arriba',
  'lined {width#} wide, from bank top to bank top':
    'revestido en {width} de ancho, de lo alto de una margen a la otra',
  'across the stream, in the direction of the stations':
    'a través de la corriente, en el sentido de las progresivas',
  "along the flow, from the conduit's end": 'a lo largo del flujo, desde el fin del conducto',
  'across the flow, heights over the bed': 'a través del flujo, alturas sobre el lecho',
  'across the flow, heights over the bed at the toe':
    'a través del flujo, alturas sobre el lecho en el pie',
  'along the flow from the crest, slope {slope#}':
    'a lo largo del flujo desde la cresta, pendiente {slope}',
  'seen along the bank, square to its slope':
    'visto a lo largo de la margen, perpendicular a su talud',
  'flow from left to right': 'flujo de izquierda a derecha',
};

export const sectionPart: Record<string, string> = {
  '{class}, {thickness#} thick': '{class}, {thickness} de espesor',
  '{class}, {kind!rockKind} rock, {thickness#} thick':
    '{class}, roca {kind}, {thickness} de espesor',
  'kind of rock not stated': 'tipo de enrocado no indicado',
  'kinds of rock that change with the level': 'tipos de enrocado que cambian con el nivel',
  'toe dug in {depth#} below the bed': 'pie excavado {depth} bajo el lecho',
  'thickened toe, {width#} wide and {thickness#} thick':
    'pie engrosado, {width} de ancho y {thickness} de espesor',
  'foot {depth#} below the bed': 'base {depth} bajo el lecho',
  'key at the top, {width#} wide and {depth#} deep':
    'dentellón superior, {width} de ancho y {depth} de profundidad',
  'wedge stakes {length#} long': 'estacas en cuña de {length}',
  'wedge stakes {length#} long, every {spacing#}': 'estacas en cuña de {length}, cada {spacing}',
  'topsoil {thickness#}': 'suelo vegetal {thickness}',
  'topsoil {thickness#}, seeded: {seed_}': 'suelo vegetal {thickness}, sembrado: {seed}',
  'blanket, type {type}': 'manta, tipo {type}',
  'anchor trench at the top': 'zanja de anclaje arriba',
  "trench at the water's edge": 'zanja al borde del agua',
  'significant wave height {height#}': 'altura significativa de ola {height}',
  'apron {length#} long, by: {method!method}': 'delantal de {length} de largo, según: {method}',
  'apron {length#} long, as stated': 'delantal de {length} de largo, según se indica',
  '{width#} wide at its end by that method': '{width} de ancho en su extremo según ese método',
  '{width#} wide at its end, by: {method!method}':
    '{width} de ancho en su extremo, según: {method}',
  '{width#} wide at its end by: {method!method}': '{width} de ancho en su extremo, según: {method}',
  '{width#} wide at the conduit, three times its height':
    '{width} de ancho en el conducto, tres veces su altura',
  'conduit, {height#} high': 'conducto, {height} de alto',
  'pier, {width#} wide across the flow; its foundation goes on below':
    'pila, {width} de ancho a través del flujo; su cimiento sigue abajo',
  'pier, of a width that is not stated': 'pila, de ancho no indicado',
  'pier and reach of the rock drawn as they may be: give pier_width under method_choices, {method}':
    'pila y alcance de la roca dibujados como podrían ser: indique pier_width en method_choices, {method}',
  'rock at least {height#} above the design water':
    'roca al menos {height} por encima del agua de diseño',
  'vertical wall of the abutment; its footing is drawn as it may be, not as it is':
    'pared vertical del estribo; su zapata se dibuja como podría ser, no como es',
  'apron {length#} from the toe into the waterway, by: {method!method}':
    'delantal de {length} desde el pie hacia el cauce, según: {method}',
  'slope of the fill not stated: drawn at {slope#}':
    'talud del relleno no indicado: dibujado a {slope}',
  'the embankment is covered {length#} beyond where it leaves the abutment':
    'el terraplén se cubre {length} más allá de donde deja el estribo',
  'upper end of the rock not stated: drawn one wave height above still water':
    'extremo superior de la roca no indicado: dibujado una altura de ola sobre el agua en reposo',
  'depth at the foot not stated: drawn one wave height below still water':
    'tirante en la base no indicado: dibujado una altura de ola bajo el agua en reposo',
  'still water, {case}': 'agua en reposo, {case}',
  '{case}, tailwater {depth#}': '{case}, tirante aguas abajo {depth}',
  'key, {volume#} of its rock below the layer': 'dentellón, {volume} de su roca bajo la capa',
  "key {depth#} deep from the layer's surface, square to the slope":
    'dentellón de {depth} desde la superficie de la capa, perpendicular al talud',
  '{width#} wide at the bottom': '{width} de ancho en el fondo',
  '{width#} wide under the layer': '{width} de ancho bajo la capa',
  'layer {thickness#} thick over the last {length#}': 'capa de {thickness} en los últimos {length}',
  'the layer goes on; its other end is the mirror of this':
    'la capa sigue; su otro extremo es simétrico',
  'keys between the ends at most every {spacing#}':
    'dentellones entre los extremos a lo sumo cada {spacing}',
};

/** Typical sections in words. */
export const typicalSections: Record<string, string> = {
  'Typical section of {zone} to true scale, {view!sectionView}: {parts;sectionPart}.':
    'Sección típica de {zone} a escala verdadera, {view}: {parts}.',
  'Key at each end of {zone} to true scale, {view!sectionView}: {parts;sectionPart}.':
    'Dentellón en cada extremo de {zone} a escala verdadera, {view}: {parts}.',
  '{zone} from above to true scale, {view!sectionView}: {parts;sectionPart}.':
    '{zone} desde arriba a escala verdadera, {view}: {parts}.',
  'Percent smaller by mass against grain size, from left to right: {layers_}.':
    'Porcentaje que pasa, en masa, según el tamaño de grano, de izquierda a derecha: {layers}.',
  'Percent smaller by mass over size: {one} and {other}.':
    'Porcentaje que pasa, en masa, según el tamaño: {one} y {other}.',
  'The channel seen from above, north up, {width#} wide, flowing along the arrows, with {n#} bends and the zones {zones}.':
    'El cauce visto desde arriba, con el norte arriba, {width} de ancho, corre según las flechas, con {n} curvas y las zonas {zones}.',
};
