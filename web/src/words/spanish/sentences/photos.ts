/** What is said of measuring on photos. */
export const photos: Record<string, string> = {
  'The outlines could not be compared.': 'No se pudieron comparar los contornos.',
  'At most {share#} of the rock seen is outlined wrongly, at 95 % confidence.':
    'A lo sumo el {share} de la roca a la vista tiene mal el contorno, con 95 % de confianza.',
  'Stones that were not outlined at all are not looked at: see on the photos that none are missing.':
    'No se miran las piedras sin contorno: vea en las fotos que no falte ninguna.',
  '{n#} outlines looked at: {right#} right, {other#} otherwise, {none#} no rock; {hidden#} mostly hidden.':
    '{n} contornos mirados: {right} bien, {other} de otro modo, {none} sin roca; {hidden} casi ocultos.',
  'Stones are {ratio#} times as large as outlined ({low#} to {high#}, 90 %).':
    'Las piedras son {ratio} veces lo que dice el contorno (de {low} a {high}, 90 %).',
  'The limits of D50 allow {low#} to {high#}: the automatic result does not agree.':
    'Los límites del D50 admiten de {low} a {high}: el resultado automático no concuerda.',
  'The limits of D50 allow {low#} to {high#}: so far the automatic result agrees.':
    'Los límites del D50 admiten de {low} a {high}: hasta ahora el resultado automático concuerda.',
  'The limits of D50 allow {low#} to {high#}: the automatic result agrees.':
    'Los límites del D50 admiten de {low} a {high}: el resultado automático concuerda.',
  'The limits of D50 allow {low#} to {high#}: the automatic result agrees, but so few nodes cannot show that it does.':
    'Los límites del D50 admiten de {low} a {high}: el resultado automático concuerda, pero tan pocos puntos no lo demuestran.',
  'The photos do not tell D50, so there is nothing to compare with.':
    'Las fotos no dicen el D50, así que no hay con qué comparar.',
  'Use a count of 100 nodes instead of the outlines: tap the stones under a grid, on two or three photos.':
    'Use un conteo de 100 puntos en lugar de los contornos: toque las piedras bajo una cuadrícula, en dos o tres fotos.',
  'Or mend the outlines and check them anew.': 'O corrija los contornos y verifíquelos de nuevo.',
  'Look at {n#} nodes in all.': 'Mire {n} puntos en total.',
  'Look at more nodes.': 'Mire más puntos.',
  'Take photos from nearer by.': 'Tome fotos de más cerca.',

  // What is said against a photo.
  'The photo is dark: stones run into one another. Take it by daylight.':
    'La foto es oscura: las piedras se confunden. Tómela con luz de día.',
  'The photo is blurred: small stones are lost. Hold still, wipe the lens, focus on the rock.':
    'La foto está borrosa: se pierden las piedras chicas. No se mueva, limpie el lente, enfoque la roca.',
  'Half of the rock seen is smaller than {n#} pixels; {more#} or more tell more. Go nearer, or take the photo with more pixels.':
    'La mitad de la roca a la vista mide menos de {n} píxeles; {more} o más dicen más. Acérquese, o tome la foto con más píxeles.',
  'The photo is only {n#} median stones wide; 12 to 14 tell more. Take it from farther away, or take more photos that do not overlap.':
    'La foto abarca solo {n} piedras medianas de ancho; de 12 a 14 dicen más. Tómela de más lejos, o tome más fotos que no se repitan.',
  'Photo {n#} is an oblique view: square to the face tells more.':
    'La foto {n} es oblicua: de frente a la cara dice más.',
  'Photo {n#} is an oblique view with one mark: away from it the scale is wrong by up to 20 %. Lay a second one higher or lower on the rock.':
    'La foto {n} es oblicua y tiene una sola marca: lejos de ella la escala yerra hasta un 20 %. Ponga otra sobre la roca, más arriba o más abajo.',
  'By its {mark!mark} photo {n#} looks {angle#} off square to the face: above {most#} it is an oblique view. Take it square to the face, or state an oblique view.':
    'Por {mark}, la foto {n} mira desviada {angle} de la perpendicular a la cara: por encima de {most} es oblicua. Tómela de frente a la cara, o indique una vista oblicua.',
  'Round {mark!markOf} of photo {n#} little rock is outlined: look whether it lies on the rock. A scale in front of the rock makes it too small.':
    'Alrededor de {mark} de la foto {n} hay poca roca con contorno: vea si está sobre la roca. Una escala delante de la roca la hace demasiado chica.',
  'Balls and boards cover {share#} of photo {n#}: use smaller ones.':
    'Bolas y tableros cubren el {share} de la foto {n}: use otros más chicos.',

  // What a curve from photos leaves open.
  'D15 is not yet known: it is smaller than the smallest stone that the photos resolve, {size#} as photographed.':
    'Aún no se sabe el D15: es menor que la piedra más chica que muestran las fotos, {size} en la foto.',
  'D15 is indicative: small stones fall into the holes between large ones.':
    'El D15 es indicativo: las piedras chicas caen en los vacíos entre las grandes.',
  'D15 is indicative: small stones fall into the holes between large ones, and in a heap its factor hangs on how far the sizes spread.':
    'El D15 es indicativo: las piedras chicas caen en los vacíos entre las grandes, y en un montón su factor depende de cuánto se dispersan los tamaños.',
  'Half of the stones are smaller than {n#} pixels; 50 to 100 tell more.':
    'La mitad de las piedras mide menos de {n} píxeles; de 50 a 100 dicen más.',
  '{n#} of the photos is less than {w#} D50 wide and not so sure; take them 12 to 14 D50 wide.':
    '{n} de las fotos abarca menos de {w} D50 de ancho y es menos segura; tómelas de 12 a 14 D50 de ancho.',
  '{n#} of the photos are less than {w#} D50 wide and not so sure; take them 12 to 14 D50 wide.':
    '{n} de las fotos abarcan menos de {w} D50 de ancho y son menos seguras; tómelas de 12 a 14 D50 de ancho.',
  'Photos that show the same rock tell no more than one: where they overlap, or show all of a small pile, the limits are too narrow.':
    'Fotos que muestran la misma roca no dicen más que una: donde se traslapan, o muestran todo un acopio pequeño, los límites son demasiado estrechos.',
  'All photos together are {n#} D50 wide; take them 12 to 14 D50 wide, or more of them.':
    'Todas las fotos juntas abarcan {n} D50 de ancho; tómelas de 12 a 14 D50 de ancho, o tome más.',
  'Photo {n#} does not state its focal length: 26 mm was taken (common practice).':
    'La foto {n} no indica su distancia focal: se tomaron 26 mm (práctica común).',
  'More than half of the nodes were left out as mostly hidden.':
    'Más de la mitad de los puntos se saltaron por casi ocultos.',
  'How well the outlines were drawn is not in the limits.':
    'En los límites no está cuán bien se trazaron los contornos.',
  'A photo shows the surface; the factors lead to the whole pile as it was poured or placed. Photograph several faces and heights, or a freshly cut face.':
    'Una foto muestra la superficie; los factores llevan a todo el acopio tal como se volcó o colocó. Fotografíe varias caras y alturas, o una cara recién cortada.',
  'The factors were found on rendered piles and never checked against rock that was weighed: replace them by a calibration of your own.':
    'Los factores se hallaron en acopios simulados y nunca se verificaron con roca pesada: reemplácelos por una calibración propia.',
  'How large rock looks hangs on its form: 4 to 6 % from rock to rock in a layer, 7 % in a heap; part of the interval.':
    'Qué tan grande se ve la roca depende de su forma: de 4 a 6 % de una roca a otra en una capa, 7 % en un montón; parte del intervalo.',
  'D15 is indicative: small stones hide, and in a heap its factor hangs on how far the sizes spread (0.70 to 0.87).':
    'El D15 es indicativo: las piedras pequeñas se ocultan, y en un montón su factor depende de cuánto se dispersan los tamaños (de 0.70 a 0.87).',
  'The factors were found on rendered piles and never checked against rock that was weighed.':
    'Los factores se hallaron en acopios simulados y nunca se verificaron con roca pesada.',
};

/** What tells the scale of a photo. */
export const mark: Record<string, string> = {
  balls: 'sus bolas',
  'marker board': 'su tablero de marcas',
};

export const markOf: Record<string, string> = {
  'ball {n#}': 'la bola {n}',
  'staff {n#}': 'la mira {n}',
  'board {n#}': 'el tablero {n}',
};
