import { writeFigures } from '../figures';
import { locale } from './locale';

/** The figures inside English sentences. */
export const figures = writeFigures(locale);
