/** Meanings of what stands in calculations: filters, covers, photos, statistics. */
export const moreMeanings: Record<string, string> = {
  'D{p#} as photographed over D{q#} of the whole pile':
    'D{p} en la foto sobre D{q} de todo el acopio',
  '{material}, in place over loose': '{material}, en obra sobre suelto',
  'along the bank, from the toe to the top of the rock':
    'a lo largo de la margen, del pie a lo alto de la roca',
  'along the edges': 'a lo largo de los bordes',
  'and for its largest grain': 'y por su grano más grande',
  "angle between the stone's path and the line of steepest fall":
    'ángulo entre el recorrido de la piedra y la línea de máxima pendiente',
  'area a roll covers within its overlaps': 'área que cubre un rollo con sus traslapes',
  'area of a roll': 'área de un rollo',
  'area to cover, with the trenches': 'área por cubrir, con las zanjas',
  'chance by {n#} quasi-random samples': 'probabilidad por {n} muestras cuasi aleatorias',
  'chance of such a distance when all looks are at the same rock':
    'probabilidad de tal distancia si todas las observaciones son de la misma roca',
  'channel widths between keys: one or two': 'anchos del cauce entre dentellones: uno o dos',
  'confidence that the percent smaller is at least p':
    'confianza en que el porcentaje que pasa es al menos p',
  'confidence that the percent smaller is at most p':
    'confianza en que el porcentaje que pasa es a lo sumo p',
  'critical gradient': 'gradiente crítico',
  'degrees of freedom': 'grados de libertad',
  'depth factor, 1 where h < 5·Dn50': 'factor de tirante, 1 donde h < 5·Dn50',
  'different sizes; at each, {formula_}': 'tamaños distintos; en cada uno, {formula}',
  'distance of the looks from common shares':
    'distancia de las observaciones a proporciones comunes',
  'effective stones of all looks; {formula_}':
    'piedras efectivas de todas las observaciones; {formula}',
  'equally informative stones, m the mean stone mass of each group':
    'piedras de igual información, con m la masa media de piedra de cada grupo',
  'equally informative stones, with w = D^m of each stone':
    'piedras de igual información, con w = D^m de cada piedra',
  'error of sampling, scale and factor together': 'error de muestreo, escala y factor juntos',
  'error of sampling, standard deviation of ln D': 'error de muestreo, desviación estándar de ln D',
  'error of the check, standard deviation of ln R':
    'error de la verificación, desviación estándar de ln R',
  'error of the scale of all photos together': 'error de la escala de todas las fotos juntas',
  'error of the scale of photo {n#}, standard deviation':
    'error de la escala de la foto {n}, desviación estándar',
  'excavation of the trench for each unit of length':
    'excavación de la zanja por unidad de longitud',
  'fill in place for each volume of rock': 'relleno en obra por volumen de roca',
  fines: 'finos',
  'fines over the share from which it is stable':
    'finos sobre la proporción desde la que es estable',
  'from the middle of the channel to the middle of the rock, to the right':
    'del medio del cauce al medio de la roca, hacia la derecha',
  'gap ratio': 'relación de salto',
  'gradient allowed': 'gradiente admitido',
  gravel: 'grava',
  'height of the covered slope': 'altura del talud cubierto',
  'how widely the sizes are spread': 'cuánto se dispersan los tamaños',
  'in all': 'en total',
  'in the field': 'en el campo',
  'its error, which more photos do not reduce': 'su error, que más fotos no reducen',
  'keys, one at each end': 'dentellones, uno en cada extremo',
  largest: 'máximo',
  'largest ratio': 'relación máxima',
  'largest that is stable': 'máximo estable',
  'largest, against segregation': 'máximo, contra la segregación',
  'largest, to hold the soil': 'máximo, para retener el suelo',
  least: 'mínimo',
  'least of a soil that holds below it': 'mínimo de un suelo que resiste debajo',
  'least of such a layer, placed dry': 'mínimo de tal capa, colocada en seco',
  'least ratio': 'relación mínima',
  'least that is stable': 'mínimo estable',
  'least, so that the band is no wider than five':
    'mínimo, para que la banda no sea más ancha que cinco',
  'least, to let the water out': 'mínimo, para que salga el agua',
  'length of a roll': 'longitud de un rollo',
  'length of edges held in trenches': 'longitud de bordes sujetos en zanjas',
  'length of the layer along the bank': 'longitud de la capa a lo largo de la margen',
  'length of the layer along the ground, across the stream':
    'longitud de la capa sobre el terreno, a través de la corriente',
  'length of the rock along the stream': 'longitud de la roca a lo largo de la corriente',
  'length of the staff': 'longitud de la mira',
  "length to protect above the bend's limit, at least":
    'longitud por proteger aguas arriba del límite de la curva, al menos',
  "length to protect below the bend's limit, at least":
    'longitud por proteger aguas abajo del límite de la curva, al menos',
  'limits counted; each turns away at α/k': 'límites contados; cada uno rechaza con α/k',
  'limits of the moving average, in its standard deviations':
    'límites de la media móvil, en sus desviaciones estándar',
  'loads between two false alarms': 'viajes entre dos falsas alarmas',
  'loose {material} to rock': '{material} suelto por roca',
  'margin ln(available/required) at the means, no safety factor':
    'holgura ln(disponible/pedido) con las medias, sin factor de seguridad',
  'mass as it will lie': 'masa tal como quedará',
  'mass of placed rock for each volume it fills': 'masa de roca colocada por volumen que ocupa',
  'metres to a pixel at mid-height of photo {n#}': 'metros por píxel a media altura de la foto {n}',
  'metres to a pixel at the staff': 'metros por píxel en la mira',
  'more that the trenches take up': 'lo que además llevan las zanjas',
  'note, not used: by the other branch': 'nota, sin usar: por la otra rama',
  'note, not used: in high turbulence (C {c#})': 'nota, sin usar: con mucha turbulencia (C {c})',
  'note, not used: side-slope factor of the analytic form':
    'nota, sin usar: factor de talud lateral de la forma analítica',
  'of the blend, by mass': 'de la combinación, en masa',
  'of the regraded soil': 'del suelo recompuesto',
  'of the soil before regrading': 'del suelo antes de recomponer',
  'overlap at the ends': 'traslape en los extremos',
  'overlap at the sides': 'traslape a los lados',
  'passes {size#}': 'pasa {size}',
  'passes the No. 200 sieve, of what passes No. 4':
    'pasa el tamiz No. 200, de lo que pasa el No. 4',
  'percent on the right side of that limit': 'porcentaje del lado bueno de ese límite',
  'percent smaller than {size#} by mass; {n#} stones of {bin!range}, middle size {middle#}':
    'porcentaje menor que {size} en masa; {n} piedras de {bin}, tamaño medio {middle}',
  'percent smaller than {size#} by mass; {mass#} in {bin!range}':
    'porcentaje menor que {size} en masa; {mass} en {bin}',
  'percent smaller up to which the curve is looked at':
    'porcentaje que pasa hasta el que se mira la curva',
  'percent smaller where it stands': 'porcentaje que pasa donde está',
  'percent smaller where the curve is split there':
    'porcentaje que pasa donde la curva se parte allí',
  permeability: 'permeabilidad',
  'porosity in place of {material}': 'porosidad en obra de {material}',
  'power of the size by which a count becomes a share of the mass: {way!way}':
    'potencia del tamaño con que un conteo pasa a proporción de masa: {way}',
  'quality index': 'índice de calidad',
  'ratio of medians': 'relación de medianas',
  retention: 'retención',
  'rock of a key below the layer, for each unit of length':
    'roca de un dentellón bajo la capa, por unidad de longitud',
  'rock of it for each unit of length': 'su roca por unidad de longitud',
  'rock of the toe for each unit of length': 'roca del pie por unidad de longitud',
  sand: 'arena',
  'scatter of the size needed, from the error of the mean specific gravity':
    'dispersión del tamaño necesario, por el error de la densidad relativa media',
  'share above the least thickness, percent':
    'proporción por encima del espesor mínimo, porcentaje',
  'share of the rock seen that may be outlined wrongly, 95 % confidence':
    'proporción de la roca a la vista que puede tener mal el contorno, 95 % de confianza',
  'silty sand': 'arena limosa',
  'size between two compared classes': 'tamaño entre dos clases comparadas',
  'size taken below': 'tamaño tomado por debajo',
  "slope of the trench's sides": 'talud de los lados de la zanja',
  'solids share of the mix, mixed before placing':
    'proporción de sólidos de la mezcla, mezclada antes de colocar',
  'spacing along the edges': 'separación a lo largo de los bordes',
  'standard deviation of the margin': 'desviación estándar de la holgura',
  'standard error of the sampled chance': 'error estándar de la probabilidad muestreada',
  "stones' worth of evidence for the blend": 'evidencia para la combinación, en piedras',
  'strips side by side': 'franjas una junto a otra',
  'sum at which the alarm is raised, in standard deviations':
    'suma con que se da la alarma, en desviaciones estándar',
  'that at most {share#} is smaller than the required size':
    'de que a lo sumo el {share} es menor que el tamaño que se pide',
  'type parameter; by the printed limits the rock is type {type}':
    'parámetro de tipo; por los límites impresos la roca es de tipo {type}',
  uniformity: 'uniformidad',
  'velocity at the stone over it; outside of a bend by its radius and width':
    'velocidad en la piedra sobre ella; en el exterior de una curva, por su radio y ancho',
  'volume of the mix over that of its rock': 'volumen de la mezcla sobre el de su roca',
  'width at its end, flared 1:3 each side': 'ancho en su extremo, abierto 1:3 a cada lado',
  'width of a roll': 'ancho de un rollo',
  'width of its bottom': 'ancho de su fondo',
};
