/** Where in a document a rule stands, and what it says there; the titles of documents stay. */
export const placesInSources: Record<string, string> = {
  '1.0 width upstream, 1.5 widths downstream': '1.0 ancho aguas arriba, 1.5 anchos aguas abajo',
  '1.5 times the largest grain': '1.5 veces el grano más grande',
  "12 in at the ends; the maker's own pattern stands before it":
    '12 in en los extremos; lo que indica el fabricante vale antes',
  '312.03.04, finished surface within 3 in of the lines drawn':
    '312.03.04, superficie terminada a no más de 3 in de las líneas dibujadas',
  "4 to 6 in at the sides; the maker's own pattern stands before it":
    'de 4 a 6 in a los lados; lo que indica el fabricante vale antes',
  '591S.3, first row of the table': '591S.3, primera fila de la tabla',
  '6 in for a single layer, 4 in for each of several; half as much again under water':
    '6 in para una sola capa, 4 in para cada una de varias; la mitad más bajo el agua',
  '6.1.1.3: at least 1.5 approach widths past the downstream point of tangency':
    '6.1.1.3: al menos 1.5 anchos de llegada después del punto de tangencia de aguas abajo',
  '6.5·d85 for dispersive soils and 5·d15, both second-hand':
    '6.5·d85 para suelos dispersivos y 5·d15, ambos de segunda mano',
  '72-2.02, gradation for placement by Method A':
    '72-2.02, granulometría para colocación por Method A',
  'App. A, Examples 1 and 2 (reproduced)': 'App. A, ejemplos 1 y 2 (reproducidos)',
  'App. A, eq. A.2, K 0.034 and 0.038': 'App. A, ec. A.2, K 0.034 y 0.038',
  'App. A, no stone above 3.5': 'App. A, ninguna piedra mayor que 3.5',
  'App. D, eq. D.2: constant': 'App. D, ec. D.2: constante',
  'App. D, eq. D.3': 'App. D, ec. D.3',
  'App. D, eqs. D.1a and D.1b: symbols': 'App. D, ecs. D.1a y D.1b: símbolos',
  'App. D: definition of Fro': 'App. D: definición de Fro',
  'Chapter 6: a design wave and Hudson for wave attack on highways':
    'capítulo 6: una ola de diseño y Hudson para el ataque de olas a carreteras',
  'Chapter 7: formula, Table 7-8, graded riprap with KRR, layer and crest':
    'capítulo 7: fórmula, Tabla 7-8, enrocado graduado con KRR, capa y cresta',
  'Design Guideline 4': 'Design Guideline 4',
  'Design Guideline 4, table of riprap classes I to X':
    'Design Guideline 4, tabla de las clases de enrocado I a X',
  'Design Guideline 4: fits of the bend and side-slope curves':
    'Design Guideline 4: ajustes de los gráficos de curva y de talud lateral',
  'Eqs 6.24–6.26, problems 2 of ch. 6': 'ecs. 6.24–6.26, problemas 2 del cap. 6',
  'Example 16-6, cumulative sum chart': 'ejemplo 16-6, gráfico de suma acumulada',
  'Section 110, percentage of material within limits':
    'Section 110, porcentaje del material dentro de límites',
  'Table 10.1': 'Tabla 10.1',
  'Table 1: stability factors; factor 3.38 at piers':
    'Tabla 1: factores de estabilidad; factor 3.38 en pilas',
  'Table 2, conversion of counts to mass': 'Tabla 2, conversión de conteos a masa',
  'Table 3, AASHTO gradation classes': 'Tabla 3, clases de granulometría de AASHTO',
  'Table 705-1, classes 1 to 8, read in a document that quotes it':
    'Tabla 705-1, clases 1 a 8, leída en un documento que la cita',
  'Tables 1, 205-A and 205-B, classes 10 to 500 kg':
    'Tablas 1, 205-A y 205-B, clases de 10 a 500 kg',
  'Technical Supplement 14C': 'Technical Supplement 14C',
  'Technical Supplement 14C, Fig. 8: far western states':
    'Technical Supplement 14C, Fig. 8: estados del lejano oeste',
  'a class reaches at least from the median size of the class below to that of the class above':
    'una clase va al menos del tamaño mediano de la clase inferior al de la superior',
  'a dilation above 1.05 loses the contact of the rock':
    'con dilatación mayor que 1.05 la roca pierde el contacto',
  'a stake holds below the topsoil': 'una estaca agarra debajo del suelo vegetal',
  'a tally may be out by one load, or 5 %': 'un conteo puede errar en un viaje, o 5 %',
  'allowable tractive force 0.4·D75': 'fuerza tractiva admisible 0.4·D75',
  "an apron two stones thick, of the slope's own stone where no berm is computed":
    'un delantal de dos piedras de espesor, de la misma piedra del talud donde no se calcula berma',
  'angle of repose of stones of 100 to 500 mm: very angular 41°, slightly angular 40°, rounded 37° to 38°':
    'ángulo de reposo de piedras de 100 a 500 mm: muy angulares 41°, algo angulares 40°, redondeadas de 37° a 38°',
  'apron and size forms': 'formas para delantal y tamaño',
  'assisted count as a check of outlines': 'conteo asistido como verificación de contornos',
  "bare rock nearly always needs bedding or fabric; a design that shows neither goes to the designer with the soil's data":
    'la roca desnuda casi siempre necesita capa de apoyo o geotextil; un diseño que no muestra ninguno va al proyectista con los datos del suelo',
  'base-soil categories and control points': 'categorías del suelo de base y puntos de control',
  'bedding is nowhere thinner than drawn':
    'la capa de apoyo no es más delgada que lo dibujado en ninguna parte',
  'branch and bound, Land & Doig 1960': 'ramificación y acotación, Land & Doig 1960',
  'bucket of 2 to 3 times the largest stone': 'cucharón de 2 a 3 veces la piedra más grande',
  'ch. 3: shear on a side': 'cap. 3: esfuerzo cortante en un talud',
  'chapters 5 and 6': 'capítulos 5 y 6',
  'chapters 9 to 11': 'capítulos 9 a 11',
  'chapters 9 to 11 and 15': 'capítulos 9 a 11 y 15',
  'chart of groups and names': 'cuadro de grupos y nombres',
  'chs. 3 and 6, App. D': 'caps. 3 y 6, App. D',
  'compressible packing model': 'modelo de empaquetamiento compresible',
  'curve of the mix by the volume of its solids':
    'curva de la mezcla según el volumen de sus sólidos',
  'deep-water formulas, plunging and surging; damage levels':
    'fórmulas de aguas profundas, rompientes en voluta y en oscilación; niveles de daño',
  'densities by slope and flow; the grid is arithmetic':
    'densidades según talud y flujo; la cuadrícula es aritmética',
  'each step': 'cada paso',
  'ends half as thick again over 3 ft': 'extremos la mitad más gruesos en 3 ft',
  'ends half as thick again over at least 3 ft': 'extremos la mitad más gruesos en al menos 3 ft',
  'eq. 3-2': 'ec. 3-2',
  'eq. 3-3 and para. 3-7': 'ec. 3-3 y párr. 3-7',
  'eq. 5.219 (Pilarczyk 1995)': 'ec. 5.219 (Pilarczyk 1995)',
  'eq. 5.223 (Escarameia and May 1992)': 'ec. 5.223 (Escarameia y May 1992)',
  'eqs. 6 to 9, as reprinted in Colorado mine permits (doc. 993768, p. 30)':
    'ecs. 6 a 9, según la reimpresión en permisos mineros de Colorado (doc. 993768, p. 30)',
  'eqs. 6.3 to 6.16 and problems of secs. 6.10 and 6.12 (reproduced)':
    'ecs. 6.3 a 6.16 y problemas de las secs. 6.10 y 6.12 (reproducidos)',
  'equation for the mass of stone under current': 'ecuación de la masa de piedra bajo corriente',
  "every limit must be accepted: the owner's risk is that of one":
    'todo límite debe aceptarse: el riesgo del dueño es el de uno solo',
  'exact distribution of the two-sample statistic with ties, as in the documentation of R':
    'distribución exacta del estadístico de dos muestras con empates, como en la documentación de R',
  'factor of 3 for structures; 1.5 to 5 are in print':
    'factor de 3 para estructuras; hay impresos de 1.5 a 5',
  'factors, scale and limits of photos': 'factores, escala y límites de fotos',
  'fasteners 1 to 3 ft apart in the bottom of anchor trenches':
    'fijaciones cada 1 a 3 ft en el fondo de las zanjas de anclaje',
  "first page, Hazen's formula": 'primera página, fórmula de Hazen',
  'fit to the curve': 'ajuste al gráfico',
  'for straight reaches (restriction: WES Streambank Handbook 1997, App. A)':
    'para tramos rectos (restricción: WES Streambank Handbook 1997, App. A)',
  'geometry of strips with overlaps': 'geometría de franjas con traslapes',
  'handling sorts rock; a single oversize stone leaves gaps and goes out':
    'el manejo segrega la roca; una sola piedra de sobretamaño deja huecos y se retira',
  'hydraulic structures: rock sizing at conduit outlets':
    'estructuras hidráulicas: tamaño de roca a la salida de conductos',
  'k-sample Anderson–Darling tests, mid-ranks; Tables 1 and 2':
    'pruebas de Anderson–Darling de k muestras, rangos medios; Tablas 1 y 2',
  'keys are at least as deep as drawn': 'los dentellones tienen al menos la profundidad dibujada',
  'keys twice as deep and twice as wide as the layer is thick, sides 1V:1H':
    'dentellones de profundidad y ancho dobles que el espesor de la capa, lados 1V:1H',
  'labels of the seed are kept': 'se guardan las etiquetas de la semilla',
  'layer of graded riprap': 'capa de enrocado graduado',
  'limits of a proportion': 'límites de una proporción',
  "lower bound of the mean by Student's t": 'cota inferior de la media según la t de Student',
  'material and testing specification for riprap':
    'especificación de material y ensayos para enrocado',
  'mean of a sample': 'media de una muestra',
  'no published source': 'sin fuente publicada',
  'no stone is larger than the layer is thick': 'ninguna piedra es mayor que el espesor de la capa',
  'no topsoil on the bottom of a perennial stream; across the bottom of a dry swale':
    'sin suelo vegetal en el fondo de un cauce permanente; de lado a lado en el fondo de una hondonada seca',
  'not dropped more than 3 ft, never onto bare fabric':
    'no se deja caer de más de 3 ft, nunca sobre geotextil desnudo',
  'one sieve analysis before placing, and one when the pit changes':
    'un análisis por tamices antes de colocar, y otro cuando cambia el banco',
  'one-sided binomial test of the share that is smaller':
    'prueba binomial de un lado de la proporción menor',
  'open channels, riprap lining equation and type limits':
    'canales abiertos, ecuación de revestimiento de enrocado y límites de tipo',
  'outlet aprons: list of velocities and sizes, dimensions':
    'delantales de descarga: lista de velocidades y tamaños, dimensiones',
  'overlap of 12 in at ends and 4 to 6 in at sides':
    'traslape de 12 in en los extremos y de 4 a 6 in a los lados',
  'p. 379, filters of subdrains': 'p. 379, filtros de subdrenes',
  'para. 3-2h; FHWA HEC-23 (2009) DG4 and DG14': 'párr. 3-2h; FHWA HEC-23 (2009) DG4 y DG14',
  'paragraph 3-2h: thickness not less than the largest stone':
    'párrafo 3-2h: espesor no menor que la piedra más grande',
  'paragraph A.2.4(3): quarry-run stone at 1.5 to 2 times the thickness':
    'párrafo A.2.4(3): piedra de cantera sin clasificar con 1.5 a 2 veces el espesor',
  'placed rock is opened and looked into': 'la roca colocada se abre y se mira por dentro',
  'pp. 54-55; letter names and the meaning of size from the Urban Storm Drainage Criteria Manual Vol. 1, Table MD-7, are from memory':
    'pp. 54-55; las letras y el significado del tamaño, del Urban Storm Drainage Criteria Manual Vol. 1, Tabla MD-7, son de memoria',
  'requirements for coarse gradings, recalled with low certainty':
    'requisitos para granulometrías gruesas, recordados con poca certeza',
  'requirements for heavy gradings; the rule of the nominal limits (at most 10 % below, at most 30 % above) was read in documents that quote it':
    'requisitos para granulometrías pesadas; la regla de los límites nominales (a lo sumo 10 % por debajo, a lo sumo 30 % por encima) se leyó en documentos que la citan',
  'requirements for light gradings; the rule of the nominal limits (at most 10 % below, at most 30 % above) was read in documents that quote it':
    'requisitos para granulometrías livianas; la regla de los límites nominales (a lo sumo 10 % por debajo, a lo sumo 30 % por encima) se leyó en documentos que la citan',
  'rule of dual symbols for 5 to 12 % of fines':
    'regla de los símbolos dobles para 5 a 12 % de finos',
  'sample specification: armour and toe built to at least the line':
    'especificación de muestra: coraza y pie construidos al menos hasta la línea',
  'scour of about one wave height; apron at least three stones wide':
    'socavación de una altura de ola, más o menos; delantal de al menos tres piedras de ancho',
  'sec. 10, Fig. 165': 'sec. 10, Fig. 165',
  'sec. 3.6.1: 1.0 W upstream, 1.5 W downstream':
    'sec. 3.6.1: 1.0 W aguas arriba, 1.5 W aguas abajo',
  'sec. 5, Examples 5-1 and 5-2 (shear and bends, reproduced)':
    'sec. 5, ejemplos 5-1 y 5-2 (esfuerzo cortante y curvas, reproducidos)',
  'section 4.4.1': 'sección 4.4.1',
  'shape: at most 30 % above 2.5 and 15 % above 3.0, length to thickness':
    'forma: a lo sumo 30 % mayor que 2.5 y 15 % mayor que 3.0, largo sobre espesor',
  'shear in bends, where a zone lies outside of one':
    'esfuerzo cortante en curvas, donde una zona está en el exterior de una',
  'sheet 712-1': 'lámina 712-1',
  'size form 0.02·(Q/Do)^(4/3)/TW': 'forma del tamaño 0.02·(Q/Do)^(4/3)/TW',
  'stability of toe berms': 'estabilidad de bermas de pie',
  'stability on a bank and bed that both slope': 'estabilidad en margen y lecho, ambos inclinados',
  'stone size rises as the rock gets lighter':
    'el tamaño de la piedra sube cuanto más liviana es la roca',
  'submerged weight over the weight of water, as in texts':
    'peso sumergido sobre el peso del agua, como en los textos',
  'table of types': 'tabla de tipos',
  'the cover is carried down to where the frequent flow would take it':
    'la cubierta baja hasta donde el caudal frecuente se la llevaría',
  "the maker's own pattern stands before densities of the trade":
    'lo que indica el fabricante vale antes que las densidades del oficio',
  "the trench at the water's edge does not cut the rock":
    'la zanja al borde del agua no corta la roca',
  'title and scope seen; equation from memory':
    'se vieron título y alcance; la ecuación, de memoria',
  'top trench 6 to 9 in wide and deep': 'zanja superior de 6 a 9 in de ancho y profundidad',
  'top trench 6 to 9 in wide and deep, 1 ft or more behind the crest':
    'zanja superior de 6 a 9 in de ancho y profundidad, 1 ft o más detrás de la cresta',
  'topsoil is nowhere thinner than drawn':
    'el suelo vegetal no es más delgado que lo dibujado en ninguna parte',
  'topsoil over rock calls for a biodegradable blanket':
    'el suelo vegetal sobre roca pide una manta biodegradable',
  'trimmed area under the rock within 30 mm (0.1 ft)':
    'área perfilada bajo la roca, dentro de 30 mm (0.1 ft)',
  'variables acceptance plans': 'planes de aceptación por variables',
  'weighted mean of percents smaller': 'media ponderada de porcentajes que pasan',
  '§10.2, eqs. 10.4 and 10.5, tailwater rules':
    '§10.2, ecs. 10.4 y 10.5, reglas del tirante aguas abajo',
  '§6.2.6, sequential sampling plans': '§6.2.6, planes de muestreo secuencial',
  '§7.1.4.5: tiebacks of a stone toe at 1 to 2 channel widths, at least one at the downstream end':
    '§7.1.4.5: dentellones de un pie de piedra cada 1 a 2 anchos del cauce, al menos uno en el extremo de aguas abajo',
};
