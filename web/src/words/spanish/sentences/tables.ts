/** Bills of quantities, and tables that compare rock and submittals. */
export const tables: Record<string, string> = {
  "all that is ordered over the truck's load, rounded up":
    'todo lo pedido entre la carga del camión, redondeado hacia arriba',
  'area covered × thickness': 'área cubierta × espesor',
  'area × thickness': 'área × espesor',
  'area × thickness, and what is to spare': 'área × espesor, más lo de reserva',
  'grid and edges': 'cuadrícula y bordes',
  'in place + {share#} to spare': 'en obra + {share} de reserva',
  'length × length along the ground': 'longitud × longitud sobre el terreno',
  "ordered over the truck's load, rounded up":
    'lo pedido entre la carga del camión, redondeado hacia arriba',
  'slope and trenches × length': 'talud y zanjas × longitud',
  'strips and rolls with their overlaps': 'franjas y rollos con sus traslapes',
  'sum over the zones': 'suma de las zonas',
  'the layer and its bedding let into the ground, and the toe':
    'la capa y su capa de apoyo metidas en el terreno, y el pie',
  'volume × density as weighed': 'volumen × densidad según pesaje',
  'volume × {density_}': 'volumen × {density}',
  'parts of the mix × rock, and what is to spare': 'partes de la mezcla × roca, más la reserva',
  'loose over its swell': 'suelto entre su esponjamiento',
  'dry mass over the load, rounded up': 'masa seca entre la carga, redondeado hacia arriba',
  'what the voids of the layer take': 'lo que llena los vacíos de la capa',
  'whole strips down the slope': 'franjas enteras talud abajo',

  '{test!rockTest} ({standards_})': '{test} ({standards})',
  'As specified': 'Como se especificó',
  'Substitute as offered': 'Sustituto ofrecido',
  'Substitute made as safe': 'Sustituto con igual seguridad',
  'Certified gradation': 'Granulometría certificada',
  Class: 'Clase',
  Required: 'Se pide',
  Shape: 'Forma',
  Source: 'Procedencia',
  'Cost of all that has a price': 'Costo de todo lo que tiene precio',
  'Filter, from the soil up': 'Filtro, del suelo hacia arriba',
  'Layer against its least thickness': 'Capa frente a su espesor mínimo',
  'Layer thickness': 'Espesor de la capa',
  'Proportions of the mix': 'Proporciones de la mezcla',
  'Rock of the toe': 'Roca del pie',
  'Rock to order': 'Roca por pedir',
  'Specific gravity against the design': 'Densidad relativa frente al diseño',
  'Stone asked for': 'Piedra que se pide',
  'Stones against the size asked for': 'Piedras frente al tamaño que se pide',
  angular: 'angular',
  rounded: 'redondeada',
  'no result speaks of this': 'sin resultado al respecto',
  '{size!requiredSize}, by {method!method}': '{size}, según {method}',
  '{limit!testLimit}, NCHRP Report {n#}': '{limit}, NCHRP Report {n}',
  '{value#} or more, as the design took': '{value} o más, como tomó el diseño',
  'the band of {class}': 'la banda de {class}',
  '{n#} of the rock to {parts*part}': '{n} de la roca por {parts}',
  '{layers;layer}': '{layers}',
};

/** A layer and how thick it is. */
export const layer: Record<string, string> = { '{name}, {thickness#}': '{name}, {thickness}' };

export const part: Record<string, string> = { '{n#} of {material}': '{n} de {material}' };

/** What is required of a test. */
export const testLimit: Record<string, string> = {
  'at least {value#}': 'al menos {value}',
  'at most {value#}': 'a lo sumo {value}',
  'at most {value#} above {ratio#}:1': 'a lo sumo {value} por encima de {ratio}:1',
  '{limit!testLimit}, on average': '{limit}, en promedio',
  '{limit!testLimit}, each result': '{limit}, cada resultado',
  '{limit!testLimit}, in severe exposure': '{limit}, en exposición severa',
  '{limit!testLimit}, in moderate exposure': '{limit}, en exposición moderada',
  '{limit!testLimit}, in mild exposure': '{limit}, en exposición leve',
  '{limit!testLimit}, sodium sulfate': '{limit}, sulfato de sodio',
  '{limit!testLimit}, magnesium sulfate': '{limit}, sulfato de magnesio',
  '{limit!testLimit}, {n#} cycles': '{limit}, {n} ciclos',
};
