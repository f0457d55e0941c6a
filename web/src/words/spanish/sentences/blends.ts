/** Blends of materials on offer for a class. */
export const blends: Record<string, string> = {
  'No blend of these materials keeps {class}.':
    'Ninguna combinación de estos materiales cumple {class}.',
  'Blends of these materials keep {class}, at best by {margin#} at every limit.':
    'Combinaciones de estos materiales cumplen {class}, en el mejor caso por {margin} en cada límite.',
  'The nearest blend misses "{limit!limit}" by {share#} (it has {has#}).':
    'La combinación más cercana no llega a «{limit}» por {share} (tiene {has}).',
  'The nearest blend misses "{limit!limit}" by {share#} (it has {has#}); no material on offer keeps it by itself.':
    'La combinación más cercana no llega a «{limit}» por {share} (tiene {has}); ningún material ofrecido lo cumple por sí solo.',
  'More cannot be mended without breaking {limits*quotedLimit}.':
    'No se puede corregir más sin dejar de cumplir {limits}.',
  'No round of whole loads keeps every limit.':
    'Ninguna tanda de viajes enteros cumple todos los límites.',
  'No recipe of whole buckets keeps every limit.':
    'Ninguna receta de cucharones enteros cumple todos los límites.',
  'No whole loads of what is available, up to twice the mass, keep every limit.':
    'Ningún número de viajes enteros de lo disponible, hasta el doble de la masa, cumple todos los límites.',
  'No plan was found in the work allowed.': 'No se halló ningún plan en el trabajo permitido.',
  'fewer materials, or a wider band': 'menos materiales, o una banda más ancha',
  'another material, or a wider band': 'otro material, o una banda más ancha',
  'There is no material to blend.': 'No hay material que combinar.',
  'at least one material': 'al menos un material',
  'The mass to bring is not above zero.': 'La masa por traer no es mayor que cero.',
  'A mass to bring is more than zero.': 'Una masa por traer es más que cero.',
  'A size is more than zero.': 'Un tamaño es más que cero.',
  'What one load of it holds is not known.': 'No se sabe cuánto lleva un viaje de él.',
  'a load above 0': 'una carga mayor que 0',
  'More than 100,000 loads would be needed.': 'Harían falta más de 100,000 viajes.',
  'a smaller mass or larger loads': 'una masa menor o viajes más grandes',
  'The size to scalp at is not above zero.': 'El tamaño por quitar no es mayor que cero.',
  'a size above zero': 'un tamaño mayor que cero',
  'Nothing of this material is smaller than the size to scalp at.':
    'Nada de este material es menor que el tamaño por quitar.',
  'a larger size': 'un tamaño mayor',
  'A gradation curve needs at least two points.':
    'Una curva granulométrica necesita al menos dos puntos.',
  'two or more sizes with the percent smaller than each':
    'dos o más tamaños con el porcentaje que pasa cada uno',
  '{material} is not scalped.': 'A {material} no se le quita lo grande.',
  '{material} is not scalped. {why!}': 'A {material} no se le quita lo grande. {why}',
};

export const quotedLimit: Record<string, string> = { '"{limit!limit}"': '«{limit}»' };
