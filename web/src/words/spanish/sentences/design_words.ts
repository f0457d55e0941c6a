/** Words that stand in what is said of a design, each in a place of its own. */

/** A size that is asked for. */
export const requiredSize: Record<string, string> = {
  'a D{p#} of at least {size#}': 'un D{p} de al menos {size}',
  'a W{p#} of at least {mass#}': 'un W{p} de al menos {mass}',
  'a mean stone size of at least {size#}': 'un tamaño medio de piedra de al menos {size}',
};

/** What decides which method governs. */
export const policy: Record<string, string> = {
  'the method that leaves least margin governs': 'rige el método que deja menos holgura',
  "the designer's chosen method governs": 'rige el método que eligió el proyectista',
  'of the methods with a weight it leaves least margin':
    'de los métodos con peso, el que deja menos holgura',
};

/** Places that methods are made for. */
export const place: Record<string, string> = {
  bank: 'una margen',
  bed: 'un lecho',
  outfall: 'una descarga',
  pier: 'una pila',
  abutment: 'un estribo',
  shore: 'una orilla',
  chute: 'una rápida',
  drop: 'una caída',
  basin: 'un cuenco',
};

/** What makes a layer as thick as it is. */
export const layerRule: Record<string, string> = {
  'the largest stone': 'la piedra más grande',
  '{n#} median sizes below a conduit': '{n} tamaños medianos aguas abajo de un conducto',
  '{n#} median sizes round a pier, half as much again under water':
    '{n} tamaños medianos alrededor de una pila, la mitad más bajo el agua',
  'two stones under waves: {formula_}': 'dos piedras bajo el oleaje: {formula}',
  '{n#} median sizes on a drop': '{n} tamaños medianos en una caída',
  '{n#} median sizes in a basin; three on the slope the water enters by':
    '{n} tamaños medianos en un cuenco; tres en el talud por donde entra el agua',
  '{n#} median sizes on a chute': '{n} tamaños medianos en una rápida',
  'contraction scour and degradation together, round a pier':
    'la socavación por contracción y la degradación juntas, alrededor de una pila',
  '1.5 times the largest stone, as the steep-slope equation presumes':
    '1.5 veces la piedra más grande, como supone la ecuación de fuerte pendiente',
  '1.5 times the upper-limit median size': '1.5 veces el límite superior del tamaño mediano',
  "the multiple of D50 in the class's own manual": 'el múltiplo del D50 del manual de la clase',
  '12 in, the least of any layer': '12 in, el mínimo de toda capa',
};

/** What is uncertain in a zone. */
export const variable: Record<string, string> = {
  'Average velocity': 'la velocidad media',
  'average velocity': 'la velocidad media',
  'Available size': 'el tamaño de la roca',
  'available size': 'el tamaño de la roca',
  'Specific gravity': 'la densidad relativa',
  'specific gravity': 'la densidad relativa',
  'Local depth': 'el tirante local',
  'local depth': 'el tirante local',
};

export const variableShare: Record<string, string> = {
  '{what!variable} ({share#})': '{what} ({share})',
};
