/** Cautions of methods that speak of their formulas. */
export const methodCautions: Record<string, string> = {
  'Choose the class of which at least half, by mass, is heavier than W; lay it with inner layer, backing and fabric below.':
    'Elija la clase de la que al menos la mitad, en masa, pese más que W; colóquela con capa interior, respaldo y geotextil debajo.',
  'Coefficients are those of a trunk; the head of a structure needs heavier stone: give its coefficient.':
    'Los coeficientes son los de un tronco; la cabeza de una estructura necesita piedra más pesada: indique su coeficiente.',
  'Damage Nod: 0.5 where it begins, 2 where the toe is somewhat flattened, 4 where it fails.':
    'Daño Nod: 0.5 donde empieza, 2 donde el pie está algo aplanado, 4 donde falla.',
  'It knows neither period nor duration, nor what lies below the rock.':
    'No conoce ni el período ni la duración, ni lo que hay bajo la roca.',
  "Lane's form has no factor for bends.": 'La forma de Lane no tiene factor para curvas.',
  'Location factor K2: 0.9 near the bank in a straight reach, 1.7 in the main current round a sharp bend; between them it is a matter of judgement, and 1.7 is taken unless another is chosen.':
    'Factor de ubicación K2: 0.9 cerca de la margen en un tramo recto, 1.7 en la corriente principal de una curva cerrada; entre ambos es cuestión de criterio, y se toma 1.7 si no se elige otro.',
  "Made for channels in their own coarse material; the far-western form asks for 1.4 times what Lane's does on a straight bed.":
    'Hecho para cauces en su propio material grueso; la forma del lejano oeste pide 1.4 veces lo que la de Lane en un lecho recto.',
  'Neither form has a term for the density of the rock: rock of ordinary density is meant.':
    'Ninguna forma tiene un término para la densidad de la roca: se entiende roca de densidad común.',
  'One wave height is a rule for want of a better estimate: currents, ships and breaking on the toe scour deeper.':
    'Una altura de ola es una regla a falta de mejor estimación: corrientes, barcos y la rompiente sobre el pie socavan más.',
  'Stability factor 1.0 to 1.2: straight or mildly curved, little debris, good data. 1.3 to 1.6: moderate bends (R/W 10 to 30), moderate debris or waves. 1.6 to 2.0: sharp bends (R/W below 10), heavy debris or ice, waves of 1 to 2 ft, turbulence of abutments, poor data.':
    'Factor de estabilidad de 1.0 a 1.2: recto o de curva suave, pocos arrastres, buenos datos. De 1.3 a 1.6: curvas moderadas (R/W de 10 a 30), arrastres u olas moderados. De 1.6 a 2.0: curvas cerradas (R/W menor que 10), muchos arrastres o hielo, olas de 1 a 2 ft, turbulencia de estribos, datos pobres.',
  'The coefficient 0.30 of the velocity form is rounded up from 21/8.52².':
    'El coeficiente 0.30 de la forma con velocidad es 21/8.52² redondeado hacia arriba.',
  'The factor divides the moments that hold the stone; it is not the safety factor of another method, and the two are not put on top of each other.':
    'El factor divide los momentos que sostienen la piedra; no es el factor de seguridad de otro método, y no se suman.',
  'The form of the abutment of a zone is taken as a vertical wall, which asks for more, unless form is chosen.':
    'La forma del estribo de una zona se toma como pared vertical, que pide más, salvo que se elija form.',
  'The relation of the velocity near the bed to the average is only good for r from 0.12 to 0.20; where it matters, give the velocity near the bed.':
    'La relación entre la velocidad junto al lecho y la media vale solo para r de 0.12 a 0.20; donde importa, indique la velocidad junto al lecho.',
  "The size is a cube's; the median size by sieve is 1/0.84 times larger.":
    'El tamaño es el de un cubo; el tamaño mediano por tamiz es 1/0.84 veces mayor.',
  'The two branches do not meet exactly at Froude number 0.80: near it look at both, which the steps show.':
    'Las dos ramas no coinciden del todo en el número de Froude 0.80: cerca de él mire ambas, que están en los pasos.',
  'The velocity of a zone is taken as the average of the approaching flow; where it is that at the pier itself, choose local_velocity.':
    'La velocidad de una zona se toma como la media del flujo que llega; donde es la de la propia pila, elija local_velocity.',
  'Turbulence factor k_t²: 1.0 in ordinary river flow, 1.5 in outer bends and uneven flow, 2.0 in sharp outer bends, more where turbulence is special.':
    'Factor de turbulencia k_t²: 1.0 en flujo común de río, 1.5 en curvas exteriores y flujo irregular, 2.0 en curvas exteriores cerradas, más donde la turbulencia es especial.',
  'Turbulence intensity r: 0.12 in a straight reach (0.20 on the high side), 0.20 at the edges of a revetment, 0.35 to 0.50 at piers, spurs and transitions, 0.60 below structures.':
    'Intensidad de turbulencia r: 0.12 en un tramo recto (0.20 por lo alto), 0.20 en los bordes de un revestimiento, de 0.35 a 0.50 en pilas, espigones y transiciones, 0.60 aguas abajo de estructuras.',
  'V is the characteristic average velocity by the setback rule, not that of the channel.':
    'V es la velocidad media característica según la regla del retiro, no la del cauce.',
  'V is the velocity already multiplied by K1 and K2.':
    'V es la velocidad ya multiplicada por K1 y K2.',
  'Water that heads down the slope lowers the factor; a positive flow angle means down.':
    'El agua que va talud abajo baja el factor; un ángulo de flujo positivo es hacia abajo.',
  'Where still water already leaves little more than the factor asked for (tanφ/tanθ), the size grows without bound: flatten the bank instead.':
    'Donde ya el agua en reposo deja poco más que el factor que se pide (tanφ/tanθ), el tamaño crece sin límite: tienda más la margen.',
  'Which wave belongs to which coefficient: the manual of 1984 puts H10 = 1.27·Hs with its own lower coefficients, older users Hs with higher ones. Twice the mass lies between them.':
    'Qué ola va con qué coeficiente: el manual de 1984 pone H10 = 1.27·Hs con sus propios coeficientes menores; usuarios anteriores, Hs con otros mayores. Entre ambos está el doble de la masa.',
};
