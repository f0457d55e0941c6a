/** What is said below fields of the site document, by what its schema says. */
export const documentHelp: Record<string, string> = {
  'Ids of the revisions this one was made upon; where none stands, the one before it.':
    'Identificadores de las revisiones sobre las que se hizo esta; si no hay ninguno, la anterior.',
  'Pointers of crossing changes that are right as they stand now.':
    'Cambios cruzados que son correctos como están ahora.',
  "A class of the user's own, worded as the classes of the catalog.":
    'Una clase propia, escrita como las clases del catálogo.',
  'Percent smaller, or larger, than a size.': 'Porcentaje menor, o mayor, que un tamaño.',
  'Percent lighter, or heavier, than the mass of a stone.':
    'Porcentaje más liviano, o más pesado, que la masa de una piedra.',
  'Size at a percent smaller; either end may be open.':
    'Tamaño a un porcentaje menor; cualquiera de los extremos puede quedar abierto.',
  'Mass of a stone at a percent lighter; either end may be open.':
    'Masa de una piedra a un porcentaje más liviano; cualquiera de los extremos puede quedar abierto.',
  "Least sizes that the class's own table prints beside its band.":
    'Tamaños mínimos que la propia tabla de la clase imprime junto a su banda.',
  "Least layer thickness, where the class's own manual states one for this class.":
    'Espesor mínimo de la capa, si el propio manual de la clase indica uno para ella.',
  'What size and percent mean in the table.': 'Qué significan tamaño y porcentaje en la tabla.',
  'Density at which masses become sizes; required with windows of mass.':
    'Densidad con la que las masas se vuelven tamaños; necesaria con ventanas de masa y de porcentaje por masa.',
  "Layer thickness as a multiple of the nominal D50, where the classes' own manual states one.":
    'Espesor de la capa como múltiplo del D50 nominal, si el propio manual de las clases indica uno.',
  'What this window counts, where it differs from the rest of the band.':
    'Qué cuenta esta ventana, si difiere del resto de la banda.',
  'A number and its unit, such as "12 in".': 'Un número y su unidad, por ejemplo «12 in».',
  'A length with its unit.': 'Una longitud con su unidad.',
  'A pure number.': 'Un número sin unidad.',
  'Fall over run.': 'Caída sobre recorrido horizontal.',
  'A table kept in a file beside the document.':
    'Una tabla guardada en un archivo junto al documento.',
  'Discharge with its unit, more than 0.': 'Caudal con su unidad, mayor que 0.',
  'Days a year at or above the discharge, 0 to 366.':
    'Días por año con ese caudal o más, de 0 a 366.',
  'Columns: station, elevation, each with its unit in brackets, and roughness n. Looking downstream, from left to right; roughness holds from a point to the next.':
    'Columnas: station, elevation, cada una con su unidad entre corchetes, y la rugosidad n. Mirando aguas abajo, de izquierda a derecha; la rugosidad vale de un punto al siguiente.',
  'Columns: easting and northing, each with its unit in brackets, from upstream to downstream.':
    'Columnas: easting y northing, cada una con su unidad entre corchetes, de aguas arriba a aguas abajo.',
  'An ordered run of sections: gradually varied flow runs through it.':
    'Una serie ordenada de secciones: por ella corre el flujo gradualmente variado.',
  'From upstream to downstream.': 'De aguas arriba a aguas abajo.',
  'Distance to the next section downstream: one for all, or along left overbank, channel and right overbank. Of no account in the last section.':
    'Distancia a la sección siguiente aguas abajo: una sola, o por la planicie izquierda, el cauce y la planicie derecha. En la última sección no cuenta.',
  'Where water stands without flowing until it rises above a level; from left to right.':
    'Donde el agua está quieta hasta que sube sobre una cota; de izquierda a derecha.',
  'Sections are interpolated wherever the channel is longer between two.':
    'Se interpolan secciones donde el cauce entre dos de ellas es más largo.',
  'What is known at the ends, by flow case.':
    'Lo que se conoce en los extremos, por caso de caudal.',
  'Mixed looks for jumps; rapid needs what is known upstream.':
    'El mixto busca resaltos; el rápido necesita lo que se conoce aguas arriba.',
  'Uniform flow at this slope.': 'Flujo uniforme con esta pendiente.',
  'Read along straight lines; never extended.': 'Se lee por líneas rectas; nunca se extrapola.',
  '25° to 50°': '25° a 50°',
  'How rock is ordered: for quantities.': 'Cómo se pide la roca: para las cantidades.',
  'Share of the placed volume between the stones; 38 % where none is stated.':
    'Parte del volumen colocado que queda entre las piedras; 38 % si no se indica.',
  'Of placed rock, where it was weighed; before voids.':
    'De la roca colocada, si se pesó; vale antes que los vacíos.',
  'Ordered beyond what lies in place, as a share.':
    'Lo que se pide además de lo colocado, como proporción.',
  'Of bedding in place; without it bedding is counted by volume.':
    'De la capa de apoyo colocada; sin ella, se cuenta por volumen.',
  '15 ft where none is stated.': '15 ft si no se indica.',
  'In the currency, 0 or more.': 'En la moneda, 0 o más.',
  'What things cost. Nothing is supposed.': 'Lo que cuestan las cosas. No se supone nada.',
  'Who says so, and when.': 'Quién lo dice, y cuándo.',
  'Rock by class; before the item "rock".': 'Roca por clase; vale antes que la partida «roca».',
  'Of a share of stones by shape: length over thickness above this.':
    'De una proporción de piedras por forma: largo sobre espesor mayor que esto.',
  'What the rock of a source must keep, how often it is looked at and how it is placed. Without a set, every published one is shown and none is chosen.':
    'Lo que debe cumplir la roca de una procedencia, cada cuánto se revisa y cómo se coloca. Sin un conjunto, se muestran todos los publicados y no se elige ninguno.',
  'Id of a set of catalog/rock-requirements.json.':
    'Identificador de un conjunto de catalog/rock-requirements.json.',
  'Who states the limits below.': 'Quién indica los límites de abajo.',
  'What a supplier hands in of the rock of a source.':
    'Lo que un proveedor presenta de la roca de una procedencia.',
  'Laboratory or supplier.': 'Laboratorio o proveedor.',
  'Each with its unit: a number, a share, or a stress.':
    'Cada uno con su unidad: un número, una proporción o un esfuerzo.',
  'Looking downstream; needed where place is bank.':
    'Mirando aguas abajo; necesario si el lugar es una margen.',
  'As stated; it stands before the bend that a centreline gives.':
    'Según se indica; vale antes que la curva que da un eje.',
  'Where along a centreline the zone lies, from its first point downstream; its bend is taken from there.':
    'Dónde está la zona a lo largo de un eje, desde su primer punto hacia aguas abajo; de ahí se toma su curva.',
  'What the zone states of its extent; it stands before what section and centreline give.':
    'Lo que la zona indica de su extensión; vale antes que lo que dan sección y eje.',
  'Inputs of the method freeboard; depth, velocity and superelevation come from the water.':
    'Datos del método de borde libre; tirante, velocidad y sobreelevación salen del agua.',
  'On a bank or bed: what stands nearby and raises the velocity at the rock. Impinging flow: 1.6 of the mean velocity; a pier: 1.5 or 1.7 of the local one; or a factor that somebody found.':
    'En una margen o un lecho: lo que está cerca y aumenta la velocidad en la roca. Flujo que choca: 1.6 de la velocidad media; una pila: 1.5 o 1.7 de la local; o un factor que alguien halló.',
  'What the designer states of the water at the zone, by flow case; it stands before what is computed.':
    'Lo que el proyectista indica del agua en la zona, por caso de caudal; vale antes que lo calculado.',
  'Id of a rock class.': 'Identificador de una clase de roca.',
  'What fills the rock, one of /mixes.': 'Con qué se rellena la roca, una de las mezclas.',
  'Kinds of rock up the slope, from the toe; each goes up to its level.':
    'Tipos de enrocado a lo alto del talud, desde el pie; cada uno llega hasta su cota.',
  'A trench at the top of the slope, filled with the rock of the layer.':
    'Una zanja en lo alto del talud, llena con la roca de la capa.',
  'Id of the soil below.': 'Identificador del suelo de abajo.',
  '"envelope", "weighted" by the weights stated, or the id of the sizing method the designer chose.':
    '«envelope» (envolvente), «weighted» (según los pesos indicados) o el identificador del método de dimensionamiento que eligió el proyectista.',
  'Weights of sizing methods, by method id; with "weighted" only. Each is shown with its size.':
    'Pesos de los métodos de dimensionamiento, por método; solo con «weighted». Cada uno se muestra con su tamaño.',
  'Inputs the designer sets for a method, by method id and input key.':
    'Datos que el proyectista fija para un método, por método y por dato.',
  'What the designer states of the uncertainty of sizing, by method id. Nothing is assumed: what is not stated is taken as certain.':
    'Lo que el proyectista indica de la incertidumbre del dimensionamiento, por método. No se supone nada: lo que no se indica se toma por cierto.',
  'Who says so, and on what grounds.': 'Quién lo dice, y con qué fundamento.',
  'By input key of the method.': 'Por dato del método.',
  'True over computed size; its mean is 1 where none is stated.':
    'Tamaño verdadero sobre calculado; su media es 1 si no se indica.',
  'Its mean is the smallest size the class allows where none is stated.':
    'Su media es el menor tamaño que admite la clase, si no se indica.',
  'What the owner bears in the design flood.':
    'Lo que el propietario asume en la crecida de diseño.',
  'How one quantity is spread: a coefficient of variation or a standard deviation about the value the zone has, or about a mean; or bounds.':
    'Cómo se dispersa una cantidad: un coeficiente de variación o una desviación estándar en torno al valor de la zona, o a una media; o bien límites.',
  'Coefficient of variation, such as "10 %".': 'Coeficiente de variación, por ejemplo «10 %».',
  'In the kind of the quantity, with its unit.': 'En la magnitud de la cantidad, con su unidad.',
  'Who or what gives these figures.': 'Quién o qué da estas cifras.',
  "What is looked at for the depth of the zone's toe. Methods take what the zone gives and what the designer chose for them.":
    'Lo que se considera para la profundidad del pie de la zona. Los métodos toman lo que da la zona y lo que el proyectista eligió para ellos.',
  'For the regime formulas; needed on the outside of a bend.':
    'Para las fórmulas de régimen; necesario en el exterior de una curva.',
  'Whether the general scour holds the troughs of bedforms already.':
    'Si la socavación general ya incluye los valles de las formas de fondo.',
  "The toe of the zone's lining as drawn.": 'El pie del revestimiento de la zona, según plano.',
  'Launchable: rock stored, volume for each unit of length.':
    'Lanzable: roca acumulada, volumen por unidad de longitud.',
  'Accepted rock that other lots of the class are held against.':
    'Roca aceptada contra la que se comparan otros lotes de la clase.',
  'In the money of the document.': 'En la moneda del documento.',
  'A column intermediate axis, with its unit in brackets; longest and shortest axis may stand beside it.':
    'Una columna intermediate axis, con su unidad entre corchetes; longest axis y shortest axis pueden ir al lado.',
  'The groups of a weighed sample.': 'Los grupos de una muestra pesada.',
  'Mass with its unit.': 'Masa con su unidad.',
  'RFC 3339 in UTC.': 'RFC 3339 en UTC.',
  'How the stones were picked; decides how the count becomes a share of the mass.':
    'Cómo se eligieron las piedras; decide cómo el conteo se vuelve una proporción de la masa.',
  'In words: station, height, side.': 'En palabras: progresiva, altura, lado.',
  'Of the pile, where the look was at one side only.': 'Del acopio, si se observó un solo lado.',
  'The one load that was looked at.': 'El único viaje que se observó.',
  'Stones sorted by their mass, each range weighed.':
    'Piedras separadas por su masa, cada intervalo pesado.',
  'What the eye says of a pile; never a verdict.':
    'Lo que dice el ojo de un acopio; nunca un veredicto.',
  'Axes of stones taken blindly.': 'Ejes de piedras tomadas sin mirar.',
  'Stones outlined or tapped on photos; a curve with the errors of sampling, scale and view.':
    'Piedras contorneadas o tocadas en fotos; una curva con los errores de muestreo, escala y vista.',
  'How the rock lies that was photographed.': 'Cómo está la roca que se fotografió.',
  'How far the sizes spread, where somebody knows it: D85 over D15 about 1.35, 1.9, 2.3, 3.2.':
    'Cuánto se dispersan los tamaños, si alguien lo sabe: D85 sobre D15 de unos 1.35, 1.9, 2.3, 3.2.',
  'The largest stone in sight, by tape or by its two ends on a picture; photos do not tell it otherwise.':
    'La mayor piedra a la vista, con cinta o por sus dos extremos en una imagen; las fotos no lo dicen de otro modo.',
  'Outlines that somebody looked at, each under a node.':
    'Contornos que alguien miró, cada uno bajo un nodo.',
  'What was found of the outline.': 'Qué se halló del contorno.',
  'In place, packed alone.': 'Colocado, compactado solo.',
  'Volume loose over that in the ground.': 'Volumen suelto sobre el que tenía en el terreno.',
  'Volume in place over that in the ground.': 'Volumen colocado sobre el que tenía en el terreno.',
  'Of one truck.': 'De un camión.',
  'Oversize could be taken out above this size.':
    'Lo sobredimensionado se podría retirar a partir de este tamaño.',
  'Chance that rock which breaks a limit is accepted; one minus the confidence where absent.':
    'Probabilidad de que se acepte roca que incumple un límite; si falta, uno menos la confianza.',
  'Chance that rock which keeps every limit is turned away; one minus the confidence where absent.':
    'Probabilidad de que se rechace roca que cumple todos los límites; si falta, uno menos la confianza.',
  'Share of the mass by which good rock keeps a limit, for counting plans; 10 % where absent.':
    'Parte de la masa por la que la roca buena cumple un límite, para los planes de conteo; 10 % si falta.',
  'Size as photographed over true size, where rock was measured both ways; replaces the factors of the study.':
    'Tamaño fotografiado sobre tamaño verdadero, si la roca se midió de las dos formas; reemplaza los factores del estudio.',
  'How it was found.': 'Cómo se halló.',
  'Standard deviation that is left, over the size.':
    'Desviación estándar que queda, sobre el tamaño.',
  'The id of a flow case, whose water level is meant, or an elevation, or the word for the end of the slope.':
    'El identificador de un caso de caudal, cuyo nivel de agua se entiende, o una cota, o la palabra «top» para el final del talud.',
  "The designer's own; stands against what the engine proposes.":
    'El del proyectista; vale frente a lo que propone el motor de cálculo.',
  'What decides the kind of rock beside the water. What is absent is not known.':
    'Lo que, además del agua, decide el tipo de enrocado. Lo que falta no se sabe.',
  'Soil, water and care for plants.': 'Suelo, agua y cuidado para las plantas.',
  'Topsoil, seed, blanket and stakes over the rock, as drawn.':
    'Suelo vegetal, semilla, manta y estacas sobre la roca, según plano.',
  'Inputs of the method bare-soil-shear for the topsoil.':
    'Datos del método bare-soil-shear para el suelo vegetal.',
  'What the grown cover is, as the method lining-limits calls it.':
    'Qué es la cubierta ya crecida, como la llama el método lining-limits.',
  'What is expected of the loads of a lot.': 'Lo que se espera de los viajes de un lote.',
  'A mass with its unit.': 'Una masa con su unidad.',
  'Thickness of a placed layer at points.': 'Espesor de una capa colocada, por puntos.',
  'Percent smaller by mass at sizes that rise or fall: points, or a sieve analysis kept in a file.':
    'Porcentaje menor en masa, con tamaños en orden: puntos, o un análisis por tamizado guardado en un archivo.',
  'A sieve analysis, with the size and the percent passing.':
    'Un análisis por tamizado, con el tamaño y el porcentaje que pasa.',
  'The ground that rock lies on, as it was tested.':
    'El terreno sobre el que descansa la roca, según sus ensayos.',
  'In the place of the plasticity index.': 'En lugar del índice de plasticidad.',
  'A number, or "not plastic".': 'Un número, o «not plastic» (no plástico).',
  'Further samples of the same ground; filter and mix are judged against all of them.':
    'Otras muestras del mismo terreno; filtro y mezcla se juzgan frente a todas.',
  'What lies between soil and rock, from the soil upward.':
    'Lo que hay entre el suelo y la roca, del suelo hacia arriba.',
  'Id of a material of the document or of a standard bedding.':
    'Identificador de un material del documento o de una capa de apoyo normalizada.',
  'Apparent opening (AOS, O95).': 'Abertura aparente (AOS, O95).',
  'Of AASHTO M 288; 1 is the strongest.': 'De AASHTO M 288; la 1 es la más resistente.',
  'From which stones fall on it.': 'Desde la que las piedras caen sobre él.',
  'What fills the voids of rock, by parts of loose volume.':
    'Con qué se llenan los vacíos de la roca, por partes de volumen suelto.',
  'Of the rock; that of the zone unless stated.':
    'De la roca; la de la zona, si no se indica otra.',
  'A published recipe, in the place of parts.': 'Una receta publicada, en lugar de las partes.',
  'The material that stands for the soil of a recipe.':
    'El material que hace de suelo en una receta.',
  'Materials to design proportions with.': 'Materiales con los que se diseñan las proporciones.',
  'Photos, each by the SHA-256 of its file.': 'Fotos, cada una por el SHA-256 de su archivo.',
  'Pixels of the picture as it was taken.': 'Píxeles de la imagen tal como se tomó.',
  'x to the right and y down from the upper left corner.':
    'x hacia la derecha e y hacia abajo, desde la esquina superior izquierda.',
  "SHA-256 of the photo's file.": 'SHA-256 del archivo de la foto.',
  'Square to the face, up to 30 degrees off; or oblique.':
    'De frente a la cara, hasta 30 grados de desvío; u oblicua.',
  'Line of sight off square to the face; 6 or 44 degrees by the view where absent.':
    'Desvío de la visual respecto de la perpendicular a la cara; si falta, 6 o 44 grados según la vista.',
  'As of a camera with a 36 × 24 mm picture; 26 mm where absent.':
    'Como de una cámara con imagen de 36 × 24 mm; 26 mm si falta.',
  'Diameter below which no stone was drawn; 8 pixels where absent.':
    'Diámetro bajo el cual no se trazó ninguna piedra; 8 píxeles si falta.',
  'Marker boards that lie on the rock; each by itself.':
    'Tableros de marcas puestos sobre la roca; cada uno por sí solo.',
  'Of the dark square of one marker, measured on the print.':
    'Del cuadrado oscuro de una marca, medido en la impresión.',
  "Of the dark square, from the marker's own upper left clockwise.":
    'Del cuadrado oscuro, desde la esquina superior izquierda de la propia marca, en sentido horario.',
  'Standard deviation of the scale over the scale; for balls that of the study where absent.':
    'Desviación estándar de la escala sobre la escala; para bolas, la del estudio si falta.',
  'The visible piece of each stone.': 'La parte visible de cada piedra.',
  'As outlines, by area and box.': 'Como contornos, por área y recuadro.',
  'left, top, right, bottom': 'izquierda, arriba, derecha, abajo',
  'The stone under each node of a grid: both visible axes.':
    'La piedra bajo cada nodo de una cuadrícula: sus dos ejes visibles.',
  'A place in the grid of the survey.': 'Un lugar en la cuadrícula del levantamiento.',
  'Where the device that took it down says it was: WGS 84, decimal degrees.':
    'Dónde dice que estaba el equipo que lo anotó: WGS 84, grados decimales.',
  'North positive.': 'Norte positivo.',
  'East positive.': 'Este positivo.',
  'Within so much of it.': 'Con este error, a lo sumo.',
  'Who did it, and when.': 'Quién lo hizo, y cuándo.',
  'One walk along a zone while it is built.': 'Un recorrido por una zona mientras se construye.',
  'By the ids of the checks that the design of the zone asks for.':
    'Por las verificaciones que pide el diseño de la zona.',
  'By material of the mix; "rock" for its rock.': 'Por material de la mezcla; «rock» para su roca.',
  'Work or rock that is not as designed.': 'Trabajo o roca que no está según el diseño.',
  'Id of a check of the zone.': 'Identificador de una verificación de la zona.',
  'The engineer; required where work is used as it is.':
    'El ingeniero; necesario si el trabajo se usa tal como está.',
  'What is allowed in placing, before what is published or usual.':
    'Lo que se admite en la colocación, antes que lo publicado o usual.',
  'Who says so.': 'Quién lo dice.',
  'Of bedding, soil and depths, below what is drawn.':
    'De la capa de apoyo, el suelo y las profundidades, por debajo de lo dibujado.',
};
