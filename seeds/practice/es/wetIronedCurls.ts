import type { Sentences } from './sentences';

export const wetIronedCurls: Sentences = {
  'Curls that look sound': 'Rizos que parecen sanos',
  'Two shades lighter all over, please. At weekends I let my curls be, and everybody says how good they look.':
    'Dos tonos más claro en todo, por favor. Los fines de semana dejo mis rizos en paz, y todos me dicen qué bien se ven.',
  'The front, once a week, dry, with the flat iron on 200 °C, that’s 392 °F. For four years now.':
    'El frente, una vez por semana, seco, con la plancha a 200 °C, o sea 392 °F. Desde hace cuatro años.',
  'Straight out of the shower, five mornings a week, for four years: 200 °C, 392 °F. It dries as it goes.':
    'Al salir de la ducha, cinco mañanas por semana, desde hace cuatro años: 200 °C, 392 °F. Se seca al pasarla.',
  'Smoke? No, nothing ever burnt.': '¿Humo? No, nunca se quemó nada.',
  'It hisses, and there’s a white cloud. And afterwards it smells of singed feathers.':
    'Sisea, y sale una nube blanca. Y después huele a plumas chamuscadas.',
  'Dry, the curls look the same from root to end.': 'Secos, los rizos se ven iguales de raíz a puntas.',
  'Wet and let go, the last hand’s width hangs straight.': 'Mojado y soltado, el último palmo cuelga liso.',
  'Ironed after a water-based spray hair lost 23.5 % of its break stress, after an ethanol-based one 11.8 %. Wet against dry was not measured: it is the nearest figure there is. Damp counts as wet.':
    'Planchado tras un protector a base de agua, el cabello perdió el 23,5 % de su esfuerzo de rotura; tras uno a base de etanol, el 11,8 %. Mojado frente a seco no se midió: es la cifra más cercana que hay. Húmedo cuenta como mojado.',
  'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III · damp: common practice, no source':
    'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III · húmedo: práctica común, sin fuente',
  'A cloud may be steam, and steam smells of nothing. Hair that smells singed was hotter than any setting that is told.':
    'Una nube puede ser vapor, y el vapor no huele a nada. El cabello que huele a chamuscado estuvo más caliente que cualquier temperatura que se diga.',
  'The ends have lost the shape that the roots still have, so what held it is gone.':
    'Las puntas perdieron la forma que la raíz aún tiene: lo que la sostenía ya no está.',
};
