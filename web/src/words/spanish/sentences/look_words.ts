/** Words that stand in what is said of looks, each in a place of its own. */

/** What the eye suspects. */
export const suspicion: Record<string, string> = {
  'the small end is missing: no stone is as small as {size#}, the median of {class}':
    'falta el extremo fino: ninguna piedra es tan chica como {size}, la mediana de {class}',
  'the large end is missing: no stone is as large as {size#}, the median of {class}':
    'falta el extremo grueso: ninguna piedra es tan grande como {size}, la mediana de {class}',
  'the largest stone, {size#}, is larger than {class} allows ({most#})':
    'la piedra más grande, {size}, pasa de lo que admite {class} ({most})',
  'the most common stone, {size#}, is far from the median of the class, {median#}':
    'la piedra más frecuente, {size}, está lejos de la mediana de la clase, {median}',
  'sizes from {from#} to {to#} are missing': 'faltan tamaños de {from} a {to}',
  'stones are flat or long': 'hay piedras planas o alargadas',
  'there is much fine material': 'hay mucho material fino',
};

/** A part of what was counted. */
export const range: Record<string, string> = {
  'bin {n#}': 'el intervalo {n}',
  'group {n#}': 'el grupo {n}',
  'stone {n#}': 'la piedra {n}',
};

/** The layer of a zone. */
export const layerOf: Record<string, string> = {
  '{thickness#} of {zone}': '{thickness} de {zone}',
};
