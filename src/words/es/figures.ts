import { writeFigures } from '../figures';
import { locale } from './locale';

/** The figures inside Spanish sentences. */
export const figures = writeFigures(locale);
