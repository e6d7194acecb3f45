import type { RecordsRefusal } from '../../../shared/records/json/consultationFile';
import type { RefusalWords } from '../en/refusals';
import { sayCount } from './sayCount';

const unchanged = 'No se cambió nada.';

const sayRecords = (count: string): string => sayCount(count, 'registro', 'registros');

/** A file of records that is not brought in: nothing here was changed. */
export const recordsRefusals: Readonly<Record<RecordsRefusal, RefusalWords>> = {
  notRead: {
    what: 'El archivo de registros no se puede leer.',
    clears: `${unchanged} ¿Sigue allí? Elíjalo otra vez.`,
  },
  anotherProgram: {
    what: 'Ese no es un archivo de registros de una estación.',
    clears: `${unchanged} Elija uno hecho con “Guardar como JSON” en “Registros de hoy”.`,
  },
  table: {
    what: 'Esa es la tabla, para hojas de cálculo; le faltan toques.',
    clears: `${unchanged} Elija el archivo JSON de los mismos días.`,
  },
  backup: {
    what: 'Esa es la copia de una estación entera.',
    clears: `${unchanged} Se trae en “Copia y traslado”.`,
  },
  notText: {
    what: 'Otro programa guardó ese archivo con sus propias letras.',
    clears: `${unchanged} Cópielo otra vez, sin abrirlo entretanto.`,
  },
  cutOff: {
    what: 'Ese archivo de registros termina antes de tiempo.',
    clears: `${unchanged} Guárdelo o cópielo otra vez.`,
  },
  damaged: {
    what: 'Ese archivo se dañó o cambió desde que se guardó.',
    clears: `${unchanged} Guárdelo o cópielo otra vez.`,
  },
  newer: {
    what: 'Esos registros son de una edición más nueva de la estación.',
    clears: `${unchanged} Actualice antes esta tableta.`,
  },
  invented: {
    what: 'Esos registros son de otra clase de salón: uno de los dos es el inventado.',
    clears: `${unchanged} Salga de la demostración, o entre en ella, y elija el archivo allí.`,
  },
  practice: {
    what: 'Alguien en esos registros fue de práctica: no se atendió a nadie.',
    clears: `${unchanged} La práctica queda en la práctica.`,
  },
  fromLater: {
    what: 'Esos registros son de más de un día después del reloj de esta tableta.',
    clears: `${unchanged} Corrija fecha y hora de esta tableta y elija el archivo otra vez.`,
  },
};

export const recordRefused = (ticket: string, entry: string): RefusalWords => ({
  what: `El registro de ${ticket} no cuadra: la entrada ${entry} no pudo tocarse así.`,
  clears: `${unchanged} Guarde el archivo otra vez donde la atendieron.`,
});

export const recordDiffers = (ticket: string): RefusalWords => ({
  what: `${ticket} ya está aquí, y el archivo la cuenta de otro modo.`,
  clears: `${unchanged} Lo de aquí queda. Guarde el archivo y pregunte quién la atendió.`,
});

export const recordsNotSaved = (came: string): RefusalWords => ({
  what: `${came === '0' ? 'No entró ninguno' : `${came === '1' ? 'Entró' : 'Entraron'} ${sayRecords(came)}`}; luego la tableta no tomó más: quizá está llena.`,
  clears: 'Lo de aquí queda. Haga espacio y elija el mismo archivo: sigue desde allí.',
});

/** Bringing records in, beside the backup. */
export const records = {
  title: 'Registros de un archivo',
  hint: 'Los registros cerrados de un archivo hecho con “Guardar como JSON” entran junto a las clientas de aquí. Cada uno se juzga de nuevo, toque por toque, antes de guardar el primero.',
  choose: 'Elegir un archivo JSON',
  came: (count: string) => `${count === '1' ? 'Entró' : 'Entraron'} ${sayRecords(count)}.`,
  here: (count: string) => `Ya ${count === '1' ? 'estaba' : 'estaban'} aquí ${sayRecords(count)}.`,
  erased: (count: string) =>
    `${sayRecords(count)} ya ${count === '1' ? 'borrado aquí, y omitido' : 'borrados aquí, y omitidos'}.`,
  none: 'En ese archivo no hay registros cerrados.',
  open: (tickets: string) =>
    `Seguía abierta al guardar, y se omitió: ${tickets}. Una clienta abierta está en una sola estación, o la seguirían dos.`,
  care: 'Un registro queda en el día en que terminó, y con él entra su alto: quien abra su ficha aquí lo encuentra. El archivo nombra a las clientas por ficha: guárdelo donde solo el personal pueda leerlo.',
};
