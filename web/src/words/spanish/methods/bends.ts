/** Methods for bends and freeboard. */
import type { MethodTexts } from './method_texts';

export const bends: MethodTexts = {
  labels: {
    'eastings of the centreline, from upstream':
      'coordenadas este del eje del cauce, desde aguas arriba',
    'northings of the same points': 'coordenadas norte de los mismos puntos',
    'width of the water in the main channel at the design flow':
      'ancho del agua en el cauce principal con el caudal de diseño',
    'which bend, counted from upstream': 'qué curva, contando desde aguas arriba',
    'least radius of the smoothed centreline': 'radio mínimo del eje suavizado',
    'mean radius over the bend': 'radio medio de la curva entera',
    'by how much the course turns': 'cuánto gira el curso',
    'upstream tangent point, from the first point':
      'punto de tangencia de aguas arriba, desde el primer punto',
    'downstream tangent point, from the first point':
      'punto de tangencia de aguas abajo, desde el primer punto',
    'least radius over width': 'radio mínimo sobre ancho',
    '1 where the right bank is outside, −1 where the left bank is':
      '1 donde la margen derecha es la exterior, −1 donde lo es la izquierda',
    'how many bends the centreline has': 'cuántas curvas tiene el eje del cauce',
    'form of the channel': 'forma del cauce',
    'mean velocity of the main channel above the bend':
      'velocidad media del cauce principal aguas arriba de la curva',
    'distance below the downstream tangent point':
      'distancia aguas abajo del punto de tangencia de aguas abajo',
    'velocity ratio in the bend': 'relación de velocidades en la curva',
    'velocity ratio at the place': 'relación de velocidades en el lugar',
    'distance below the bend at which the ratio is 1 again':
      'distancia aguas abajo de la curva en que la relación vuelve a 1',
    'which width is given': 'qué ancho se da',
    'top width, as HEC-15 has it': 'ancho superior, como en HEC-15',
    "bottom width, as HEC-22's example has it": 'ancho del fondo, como en el ejemplo de HEC-22',
    'that width': 'ese ancho',
    'greatest shear in a straight reach, γ·d·S':
      'esfuerzo cortante máximo en un tramo recto, γ·d·S',
    'radius over width': 'radio sobre ancho',
    'half as much again, the upper end of measurements':
      'la mitad más, el extremo superior de las mediciones',
    'whose factor': 'de quién es el factor',
    '0.604 in feet, 0.736 in metres': '0.604 en pies, 0.736 en metros',
    '0.60 in feet, rounded': '0.60 en pies, redondeado',
    "Manning's n in the bend": 'n de Manning en la curva',
    'length to protect below the bend': 'longitud por proteger aguas abajo de la curva',
    'C·V²·W/(g·r) above the mean level': 'C·V²·W/(g·r) sobre el nivel medio',
    'V²·W/(g·r) from bank to bank, half of it on each side':
      'V²·W/(g·r) de margen a margen, la mitad a cada lado',
    'V²/g·ln(r_o/r_i) from bank to bank, half of it on each side':
      'V²/g·ln(r_o/r_i) de margen a margen, la mitad a cada lado',
    'width of the water surface': 'ancho de la superficie de agua',
    flow: 'flujo',
    'Froude number above 1': 'número de Froude mayor que 1',
    section: 'sección',
    'sloping banks': 'márgenes inclinadas',
    curve: 'curva',
    circular: 'circular',
    'with spiral transitions': 'con transiciones en espiral',
    'with spirals and a banked bottom': 'con espirales y fondo peraltado',
    'rise above the mean level at the outer bank':
      'subida sobre el nivel medio en la margen exterior',
    'difference from the inner to the outer bank': 'diferencia de la margen interior a la exterior',
    'whose rule': 'de quién es la regla',
    '2.5 ft: trapezoidal linings and riprap': '2.5 ft: revestimientos trapezoidales y enrocado',
    '2 ft: rectangular linings': '2 ft: revestimientos rectangulares',
    '3 ft: levees': '3 ft: diques',
    '1 ft: the low end of what is typical': '1 ft: el extremo bajo de lo usual',
    '2 ft: the high end of what is typical': '2 ft: el extremo alto de lo usual',
    '0.5 ft: permanent roadside channels': '0.5 ft: cunetas permanentes',
    'the depth of the flow: steep roadside channels': 'el tirante del flujo: cunetas empinadas',
    '√(C·y): canals': '√(C·y): canales',
    'level, velocity head and debris: Swiss rivers':
      'nivel, carga de velocidad y arrastres: ríos suizos',
    'depth of the design flow': 'tirante del flujo de diseño',
    'velocity of the design flow': 'velocidad del flujo de diseño',
    'rise of the water at this bank of a bend': 'subida del agua en esta margen de una curva',
    'allowance for waves and ice': 'altura adicional por olas y hielo',
    'canals: 1.5 at 20 ft³/s to 2.5 at 3000 ft³/s':
      'canales: de 1.5 con 20 ft³/s a 2.5 con 3000 ft³/s',
    'Swiss rivers: uncertainty of the bed': 'ríos suizos: incertidumbre del lecho',
    'Swiss rivers: clearance for floating debris':
      'ríos suizos: espacio libre para arrastres flotantes',
    'freeboard by the rule': 'borde libre según la regla',
    'top of the rock above the mean water level': 'tope de la roca sobre el nivel medio del agua',
  },
  cautions: {
    'A radius is no better than the points: digitise the centreline of the main channel at the design flow at least once a width through the bend.':
      'Un radio no es mejor que los puntos: digitalice el eje del cauce principal con el caudal de diseño al menos una vez por ancho a lo largo de la curva.',
    "The trapezoidal fit leaves the bend angle and the aspect ratio of the plate out and lies on the upper side of the manual's own example by about 9 %.":
      'El ajuste trapezoidal omite el ángulo de la curva y la relación de aspecto de la figura y queda del lado alto del ejemplo del propio manual, en un 9 %.',
    'A later study measured factors 15 to 50 % above this curve: see the upper value.':
      'Un estudio posterior midió factores de 15 a 50 % por encima de este gráfico: vea el valor superior.',
    'HEC-22 enters the curve with the bottom width in an example, which gives less shear; the top width is the safer choice.':
      'HEC-22 entra al gráfico con el ancho del fondo en un ejemplo, lo que da menos esfuerzo cortante; el ancho superior es la elección más segura.',
    'Made for roadside channels; on rivers compare the decay of the bank velocity.':
      'Hecho para cunetas; en ríos compare con la disminución de la velocidad en la margen.',
    'In rapid flow cross waves run on below the bend and stand higher than this in places.':
      'En flujo rápido las ondas cruzadas siguen aguas abajo de la curva y en partes suben más que esto.',
    'Local criteria go before every rule here; dams and levees have their own.':
      'Los criterios locales van antes que toda regla de aquí; presas y diques tienen los suyos.',
  },
};
