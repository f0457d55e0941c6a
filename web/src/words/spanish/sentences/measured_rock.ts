/** Measured rock taken through the design, and what could be done. */
export const measuredRock: Record<string, string> = {
  '{margin#} ({low#} to {high#})': '{margin} (de {low} a {high})',
  'Largest stone against the layer': 'La piedra más grande frente a la capa',
  'Measured {symbol} {size#} against {needed#} needed: margin {margin#}; it holds with {confidence!share} confidence.':
    'Medido {symbol} {size} frente a {needed} necesarios: holgura {margin}; resiste con {confidence} de confianza.',
  'The measured curve does not reach down to {symbol}; {needed#} is needed.':
    'La curva medida no llega hasta {symbol}; hacen falta {needed}.',
  'It holds with {confidence!share} confidence.': 'Resiste con {confidence} de confianza.',
  'See the remedies.': 'Vea las medidas correctivas.',
  'About {n#} stones in all would decide at {confidence!share} confidence.':
    'Unas {n} piedras en total decidirían con {confidence} de confianza.',
  'More stones will hardly decide: the rock lies on the limit.':
    'Más piedras difícilmente decidirán: la roca está en el límite.',
  'The measured rock holds in {zone} by every method that counts; least by {method!method}, with {confidence!share} confidence.':
    'La roca medida resiste en {zone} según todos los métodos que cuentan; la que menos, según {method}, con {confidence} de confianza.',
  'The measured rock is too small for {zone} by {method!method}: it holds with {confidence!share} confidence.':
    'La roca medida es demasiado chica para {zone} según {method}: resiste con {confidence} de confianza.',
  'Whether the measured rock holds in {zone} is not yet known: by {method!method} it holds with {confidence!share} confidence.':
    'Aún no se sabe si la roca medida resiste en {zone}: según {method} resiste con {confidence} de confianza.',
  'It may serve here if the designer agrees; note it in the record.':
    'Puede servir aquí si el proyectista está de acuerdo; anótelo en el registro.',
  'Do not place it here.': 'No la coloque aquí.',
  'Measure until about {n#} stones in all, or see the remedies.':
    'Mida hasta unas {n} piedras en total, o vea las medidas correctivas.',
  'No method speaks for this zone within its published range.':
    'Ningún método vale para esta zona dentro de su rango publicado.',
  'Ask the designer.': 'Consulte al proyectista.',
  'No stone larger than {size#} was seen; the layer is {thickness#} thick.':
    'No se vio ninguna piedra mayor que {size}; la capa tiene {thickness} de espesor.',
  'Keep looking: a larger one may lie unseen in the pile.':
    'Siga mirando: puede haber una mayor, sin verse, en el acopio.',
  'Pick out stones larger than the layer; they leave gaps round them.':
    'Saque las piedras mayores que la capa; dejan vacíos a su alrededor.',
  'There is no measured curve of this lot to take through the design.':
    'No hay curva medida de este lote para llevar al diseño.',
  'Measure the lot first.': 'Mida primero el lote.',
  'The measured rock asks for a layer of {needed#} ({rule!layerRule}); it lies {mean#} thick on the mean, at least {least#}.':
    'La roca medida pide una capa de {needed} (por {rule}); tiene {mean} de espesor medio, al menos {least}.',
  'Take out the stones that stand above the layer, or lay it thicker.':
    'Saque las piedras que sobresalen de la capa, o hágala más gruesa.',

  // What could be done.
  'Blend with several materials': 'Combinar con varios materiales',
  'Mix {n!loads} of {material} into every {m!loads} of {lot}.':
    'Mezcle {n} de {material} con cada {m} de {lot}.',
  'By estimate the blend keeps every limit of {class} and leaves {method!method} a margin of {margin#} in the zone.':
    'Según la estimación, la combinación cumple todos los límites de {class} y deja a {method} una holgura de {margin} en la zona.',
  'At {confidence!share} confidence the blend keeps every limit of {class} and leaves {method!method} a margin of {margin#} in the zone.':
    'Con {confidence} de confianza, la combinación cumple todos los límites de {class} y deja a {method} una holgura de {margin} en la zona.',
  'Spread and mix before loading out, then count 100 stones of the blend on a grid: no more than {share#} should be smaller than {size#}.':
    'Extienda y mezcle antes de cargar; luego cuente 100 piedras de la combinación en cuadrícula: no más del {share} debería ser menor que {size}.',
  'Spread and mix before loading out, then count 100 stones of the blend on a grid.':
    'Extienda y mezcle antes de cargar; luego cuente 100 piedras de la combinación en cuadrícula.',
  'No mix of up to {n#} loads with {material} serves.':
    'Ninguna mezcla de hasta {n} viajes con {material} sirve.',
  'Look for a material that has the missing sizes.':
    'Busque un material que tenga los tamaños que faltan.',
  'Thicken the layer': 'Engrosar la capa',
  'Laid as quarry-run rock, not as {class}: {from#} to {to#} instead of {drawn#} in {zone}, {least#} to {most#} more rock.':
    'Colocada como roca sin clasificar, y no como {class}: de {from} a {to} en lugar de {drawn} en {zone}, de {least} a {most} más de roca.',
  'The designer decides: the sizes hold by the margin above, the gradation is not the one ordered, and the filter must suit it.':
    'Decide el proyectista: los tamaños resisten con la holgura de arriba, la granulometría no es la que se pidió, y el filtro debe convenirle.',
  'A thicker layer does not help where the stones are too small for the water.':
    'Una capa más gruesa no ayuda donde las piedras son demasiado chicas para el agua.',
  'Take another remedy.': 'Tome otra medida correctiva.',
  'Pick them out with the bucket or over a grizzly; use them at the toe or as single boulders.':
    'Sáquelas con el cucharón o sobre una parrilla; úselas en el pie o como bolones sueltos.',
  'Measure more stones': 'Medir más piedras',
  'Count stones': 'Contar piedras',
  'Count them on a grid, spread over the whole pile and both its sides.':
    'Cuéntelas en cuadrícula, repartidas por todo el acopio y ambos lados.',
  'A count of about {n#} stones would decide whether it is {class} by itself, if it finds the shares of the photos.':
    'Un conteo de unas {n} piedras decidiría por sí solo si es {class}, si halla las proporciones de las fotos.',
  'By estimate this rock lies inside {class} ({measure!}).':
    'Según la estimación, esta roca está dentro de {class} ({measure}).',
  'Use it only where it holds': 'Usarla solo donde resiste',
  'Mark the pile with its zones; order other rock for the rest.':
    'Marque el acopio con sus zonas; pida otra roca para el resto.',
  'Send it back': 'Devolverla',
  'If no remedy serves, {lot} is not the rock that was ordered and goes back.':
    'Si ninguna medida sirve, {lot} no es la roca que se pidió y se devuelve.',
  'Decide with the designer and the supplier; keep the evidence.':
    'Decida con el proyectista y el proveedor; conserve las evidencias.',

  // Which lot goes where.
  'Which lot goes to which zone': 'Qué lote va a qué zona',
  '{lot} to {zone} ({mass#}).': '{lot} a {zone} ({mass}).',
  'No lot is shown to hold in any of its zones.':
    'De ningún lote se demuestra que resista en alguna de sus zonas.',
  'Mark each pile with its zones before loading out.':
    'Marque cada acopio con sus zonas antes de cargar.',
};

export const loads: Record<string, string> = {
  '{n#} load': '{n} viaje',
  '{n#} loads': '{n} viajes',
};
