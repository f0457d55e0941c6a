/** What is wrong with what is measured on photos, and with counts and loads. */
export const photoEntries: Record<string, string> = {
  'There is no photo.': 'No hay ninguna foto.',
  'at least one photo': 'al menos una foto',
  'There is no photo of that number.': 'No hay foto con ese número.',
  '1 to {n#}': 'de 1 a {n}',
  'Its ends are at one place or outside the picture.':
    'Sus extremos están en un mismo lugar o fuera de la foto.',
  'two taps at the ends of the stone': 'dos toques en los extremos de la piedra',
  'Its markers do not lie on the picture as on a flat board: it is bent, or a corner is not where it was put.':
    'Sus marcas no están en la foto como en un tablero plano: está doblado, o una esquina no está donde se puso.',
  'a board glued on a stiff plate, all its corners in sight':
    'un tablero pegado en una placa rígida, con todas sus esquinas a la vista',
  'No marker has that edge; the unit may be wrong.':
    'Ninguna marca tiene ese lado; puede estar mal la unidad.',
  'None of its markers was seen.': 'No se vio ninguna de sus marcas.',
  'one marker or more, with its corners': 'una marca o más, con sus esquinas',
  'No board has a marker {n#}.': 'Ningún tablero tiene la marca {n}.',
  'Marker {n#} stands here twice.': 'La marca {n} está aquí dos veces.',
  'each marker once': 'cada marca una vez',
  'The corners of marker {n#} are no square in view: off the picture, too close, or not clockwise.':
    'Las esquinas de la marca {n} no forman un cuadrado a la vista: fuera de la foto, demasiado juntas, o no en sentido horario.',
  'Markers of two boards stand under one.': 'Las marcas de dos tableros están en uno solo.',
  'each board by itself': 'cada tablero por separado',
  'A tap is outside the picture.': 'Un toque está fuera de la foto.',
  'taps on the picture': 'toques en la foto',
  'Its outline has no area.': 'Su contorno no tiene área.',
  'outlines of stones': 'contornos de piedras',
  'Both ends of an axis are at one place.': 'Los dos extremos de un eje están en un mismo lugar.',
  'two taps at the ends of each visible axis': 'dos toques en los extremos de cada eje visible',
  'This is no outline.': 'Esto no es un contorno.',
  '3 to {n#} corners in pixels of the photo': 'de 3 a {n} esquinas en píxeles de la foto',
  'The photo has {w#} × {h#} pixels.': 'La foto tiene {w} × {h} píxeles.',
  '{n#} pixels or more each way': '{n} píxeles o más en cada sentido',
  'Its pixels do not fill the picture.': 'Sus píxeles no llenan la imagen.',
  'a photo': 'una foto',
  'No stone is as large as the smallest that the photos resolve.':
    'Ninguna piedra es tan grande como la más chica que muestran las fotos.',
  'photos from nearer by, or with more pixels': 'fotos de más cerca, o con más píxeles',
  'One stone fills nearly the whole picture.': 'Una sola piedra llena casi toda la foto.',
  'photos from farther away': 'fotos de más lejos',
  'By the scale of the photo the rock does not reach up there.':
    'Según la escala de la foto, la roca no llega hasta ahí arriba.',
  'marks of the scale that fit the whole picture': 'marcas de escala que sirvan para toda la foto',
  'By its marks the rock low on the picture is farther away than that above it.':
    'Según sus marcas, la roca de abajo en la foto está más lejos que la de arriba.',
  'an upright picture, each mark with its own length':
    'una foto derecha, cada marca con su propia longitud',
  'It shows {mm#} to a pixel where all marks together show {all#} to a pixel.':
    'Muestra {mm} por píxel cuando todas las marcas juntas muestran {all} por píxel.',
  'It shows {mm#} to a pixel where all marks together show {all#}.':
    'Muestra {mm} por píxel cuando todas las marcas juntas muestran {all}.',
  'marks that agree: measure them again, and look that none stands off the rock':
    'marcas que concuerden: mídalas de nuevo, y vea que ninguna esté separada de la roca',
  "The picture's width or height is not believable.":
    'El ancho o el alto de la foto no es creíble.',
  '100 to 100,000 pixels': 'de 100 a 100,000 píxeles',
  'The line of sight grazes the face.': 'La línea de vista roza la cara.',
  '{from#} to {to#} degrees': 'de {from} a {to} grados',
  'A view {angle#} degrees off square is an oblique one.':
    'Una vista desviada {angle} grados de la perpendicular es oblicua.',
  'up to {angle#} degrees': 'hasta {angle} grados',
  'No camera has that focal length.': 'Ninguna cámara tiene esa distancia focal.',
  '8 to 400 mm, as of a camera with a 36 × 24 mm picture':
    'de 8 a 400 mm, como en una cámara de 36 × 24 mm',
  'The error of the scale is not believable.': 'El error de la escala no es creíble.',
  'Its middle is outside the picture, or no such radius fits.':
    'Su centro está fuera de la foto, o no cabe tal radio.',
  'a middle on the picture and a radius of {n#} pixels or more':
    'un centro en la foto y un radio de {n} píxeles o más',
  'No ball has that diameter; the unit may be wrong.':
    'Ninguna bola tiene ese diámetro; puede estar mal la unidad.',
  'Its marks are outside the picture or not {n#} pixels apart.':
    'Sus marcas están fuera de la foto o a menos de {n} píxeles.',
  'two marks on the picture, far apart': 'dos marcas en la foto, bien separadas',
  'On an oblique view a staff that runs up the face looks too short.':
    'En una vista oblicua, una mira que sube por la cara se ve demasiado corta.',
  'a staff that lies across the picture': 'una mira atravesada en la foto',
  'No staff has that length; the unit may be wrong.':
    'Ninguna mira tiene esa longitud; puede estar mal la unidad.',
  'How far a staff or a board on rock is wrong was not measured by the study.':
    'El estudio no midió cuánto yerra una mira o un tablero sobre la roca.',
  'the error of the scale, as a standard deviation: "5 %"':
    'el error de la escala, como desviación estándar: "5 %"',
  'The outline has {n#} corners.': 'El contorno tiene {n} esquinas.',
  '3 to {n#} corners': 'de 3 a {n} esquinas',
  'The outline crosses itself, so it encloses no one area.':
    'El contorno se cruza, así que no encierra una sola área.',
  'an outline that goes once round the stone': 'un contorno que rodee la piedra una vez',
  'The outline encloses nothing.': 'El contorno no encierra nada.',
  'It reaches beyond the picture.': 'Pasa del borde de la foto.',
  'It is the same file as {photo!where}.': 'Es el mismo archivo que {photo}.',
  'It repeats {photo!where}.': 'Repite {photo}.',
  'each once': 'cada una una vez',
  '{n#} stones are drawn on it.': 'Tiene trazadas {n} piedras.',
  '1 to {n#} stones': 'de 1 a {n} piedras',
  'Outlined and tapped stones become sizes in different ways.':
    'Las piedras con contorno y las tocadas pasan a tamaños de distinto modo.',
  'all outlined or all tapped; the other as a look of its own':
    'todas con contorno o todas tocadas; las otras, en una observación aparte',
  '{n#} stones could be used; {cut#} were cut by an edge, {hidden#} mostly hidden.':
    'Se pudieron usar {n} piedras; {cut} estaban cortadas por un borde, {hidden} casi ocultas.',
  '{n#} or more: with fewer, errors were not measured':
    '{n} o más: con menos no se midieron los errores',
  'The stones lie in a small part of the pictures: how they vary over the rock cannot be told.':
    'Las piedras están en una parte chica de las fotos: no se puede decir cómo varían sobre la roca.',
  'stones from all over each picture': 'piedras de toda la foto',
  'These are no weights.': 'Esto no son los pesos de la red.',
  'The weights are cut off.': 'Los pesos de la red están cortados.',
  'The weights are damaged.': 'Los pesos de la red están dañados.',
  'the file that came with this program': 'el archivo que vino con este programa',
  'No picture was taken.': 'No se tomó ninguna foto.',
  'at least one picture': 'al menos una foto',
  'A ball has a diameter.': 'Una bola tiene diámetro.',
  'A staff has a length.': 'Una mira tiene longitud.',
  'A marker has an edge.': 'Una marca tiene un lado.',
  'A photo is not wrong by so much.': 'Una foto no yerra tanto.',

  // Counts, loads and checks.
  'Nobody counted {n#} stones.': 'Nadie contó {n} piedras.',
  'Nobody measured {n#} stones.': 'Nadie midió {n} piedras.',
  'at most {n#} stones': 'a lo sumo {n} piedras',
  'The mass is {mass#}.': 'La masa es {mass}.',
  'Nobody weighed {mass#} stone by stone; the unit may be wrong.':
    'Nadie pesó {mass} piedra por piedra; puede estar mal la unidad.',
  'It has {n#} stones but no mass.': 'Tiene {n} piedras pero ninguna masa.',
  'The stones of {group!range} weigh {mass#} on average, which does not fit their sizes: check the units and the count.':
    'Las piedras de {group} pesan {mass} en promedio, lo que no corresponde a sus tamaños: revise las unidades y el conteo.',
  'This look says nothing of shares.': 'Esta observación no dice nada de proporciones.',
  'Ticket {ticket} stands at {n#} loads.': 'La boleta {ticket} está en {n} viajes.',
  'Without a ticket: {loads}.': 'Sin boleta: {loads}.',
  'Without a mass: {loads}.': 'Sin masa: {loads}.',
  'Measure more points of the layer, and the largest stones one by one.':
    'Mida más puntos de la capa, y las piedras más grandes una por una.',
  'Thicknesses of the rock stand in a survey of the layer.':
    'Los espesores de la roca van en un levantamiento de la capa.',
  'This check takes no lengths.': 'Esta verificación no lleva longitudes.',
  'This check counts no loads.': 'Esta verificación no cuenta viajes.',
  'A depth, thickness or lap is not negative.':
    'Una profundidad, un espesor o un traslape no es negativo.',
  'No tolerance of a lining is so.': 'Ningún revestimiento tiene tal tolerancia.',
  'No mix is told apart at this tolerance.': 'Con esta tolerancia no se distingue ninguna mezcla.',
  'No device is as near or as far as this.': 'Ningún equipo está tan cerca ni tan lejos.',
  'No grid on earth reaches there.': 'Ninguna cuadrícula de la Tierra llega ahí.',
};
