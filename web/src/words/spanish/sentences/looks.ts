/** Quick looks, largest stones, shapes, and what is amiss with looks. */
export const looks: Record<string, string> = {
  'Stones from {small#} to {large#} by eye.': 'Piedras de {small} a {large}, a ojo.',
  'It looks right; not yet known.': 'Se ve bien; aún no se sabe.',
  'Count 100 stones on a grid over the whole pile: a look alone never accepts.':
    'Cuente 100 piedras en una cuadrícula sobre todo el acopio: mirar a ojo nunca acepta.',
  'Suspicion: {what;suspicion}.': 'Sospecha: {what}.',
  'Count stones; if the small end is missing, a load of a smaller class or of another small rock product mends it.':
    'Cuente piedras; si falta el extremo fino, se remedia con un viaje de una clase menor o de otra roca chica.',
  'Count stones before any of it is placed.': 'Cuente piedras antes de colocar nada de ella.',
  'Measure that stone; a single oversize stone leaves gaps and goes out.':
    'Mida esa piedra; una sola piedra demasiado grande deja vacíos y se retira.',
  'Look whether this is the class that was ordered.': 'Vea si es la clase que se pidió.',
  'Count stones; a missing size is mended by blending.':
    'Cuente piedras; un tamaño que falta se remedia combinando.',
  'Measure the axes of 50 stones taken blindly.': 'Mida los ejes de 50 piedras tomadas sin mirar.',
  'Weigh a load with its fines, or have it screened.':
    'Pese un viaje con sus finos, o haga que se tamice.',
  'A quick look finds what is plainly wrong. It neither accepts nor rejects.':
    'Un vistazo halla lo que está claramente mal. No acepta ni rechaza.',
  'The class has no neighbour in its family on one side or on both; that end was not compared.':
    'La clase no tiene vecina en su familia por un lado o por ambos; ese extremo no se comparó.',
  'The eye favours large stones, and a pile shows its coarse foot: look at both sides and inside.':
    'El ojo prefiere las piedras grandes y un acopio muestra su pie grueso: mire de ambos lados y por dentro.',

  'A stone of {size#} or more does not fit into the layer: {layers*layerOf}.':
    'Una piedra de {size} o más no cabe en la capa: {layers}.',
  'Measure it again with its unit; if it is so, lay it aside: a single oversize stone leaves gaps round it and goes out.':
    'Mídala otra vez con su unidad; si es así, apártela: una sola piedra demasiado grande deja vacíos a su alrededor y se retira.',
  'A clock is wrong': 'Un reloj está mal',
  'Seen after the last revision was written ({when}): {looks}.':
    'Visto después de escribirse la última revisión ({when}): {looks}.',
  'Set the clocks right and correct the times: evidence is read in their order.':
    'Ponga en hora los relojes y corrija las horas: las evidencias se leen en ese orden.',

  '{n#} stones by their axes.': '{n} piedras por sus ejes.',
  '{n#} longer than {ratio#} times their least dimension ({share#}, at most {most#} asked).':
    '{n} de más de {ratio} veces su dimensión menor ({share}; se pide {most} a lo sumo).',
  '{n#} longer than {ratio#} times their least dimension: none should be placed.':
    '{n} de más de {ratio} veces su dimensión menor: no debería colocarse ninguna.',
  'Longest axis measured: {size#}.': 'Eje más largo medido: {size}.',
  'Lay flat and long stones aside, or ask the quarry for another bench.':
    'Aparte las piedras planas y alargadas, o pida a la cantera otro banco.',
  'Measure the axes of more stones, taken blindly.':
    'Mida los ejes de más piedras, tomadas sin mirar.',

  // What a measured curve warns of.
  '{share#} by mass is smaller than {size#} and how small is not known: nothing is said below that size.':
    'El {share} en masa es menor que {size} y no se sabe cuánto: por debajo de ese tamaño no se dice nada.',
  '{share#} lies in {bin!range}, which is wide ({from#} to {to#}): sizes within it are read off a straight line, not measured.':
    'El {share} cae en {bin}, que es ancho (de {from} a {to}): sus tamaños se leen en una recta, no se midieron.',
  '{n#} stones were handled; a count of 100 is usual.':
    'Se tomaron {n} piedras; lo usual es un conteo de 100.',
  '{n#} stone was handled; a count of 100 is usual.':
    'Se tomó {n} piedra; lo usual es un conteo de 100.',
  'The last {n#} readings repeat the first {m#} one by one: were they entered twice?':
    'Las últimas {n} lecturas repiten una por una las primeras {m}: ¿se anotaron dos veces?',
  'Stones {from#} to {to#} have the same reading {size#}: check them.':
    'Las piedras {from} a {to} tienen la misma lectura {size}: revíselas.',
  '{n#} of {all#} readings are equal: read to a finer step, or count in bins.':
    '{n} de {all} lecturas son iguales: lea con más detalle, o cuente por tamaños.',
  'The large stones weigh most: the {n#} stones counted speak for only {equal#} equal ones, and for fewer at the coarse end. A count on a grid needs no such conversion.':
    'Las piedras grandes pesan más: las {n} piedras contadas equivalen solo a {equal} iguales, y a menos en el extremo grueso. Un conteo en cuadrícula no necesita esa conversión.',
  'With fewer than 20 equal stones behind a count converted to mass, its confidence limits are rough.':
    'Con menos de 20 piedras iguales tras un conteo convertido a masa, sus límites de confianza son aproximados.',
  'For the share of the mass, stones smaller than {size#} were taken as between half that size and it.':
    'Para la proporción de la masa, las piedras menores que {size} se tomaron como entre la mitad de ese tamaño y él.',
  'The stones of {group!range} were not counted; for the confidence, their number was estimated at {n#} from their mass.':
    'Las piedras de {group} no se contaron; para la confianza, su número se estimó en {n} por su masa.',
  'A stone of the heaviest group is {share#} of the sample; above about 5 % a single stone moves the curve.':
    'Una piedra del grupo más pesado es el {share} de la muestra; por encima de un 5 % una sola piedra mueve la curva.',
  'The gradation of the other material is taken from its certificate as exact.':
    'La granulometría del otro material se toma de su certificado como exacta.',
};
