import type { PriceBook } from '../job/schema';

/**
 * Entries of a book that look like a price and are none: a material for nothing or less, a task of no hours. They count
 * as if they were not there, so that a price with a slip in its book is incomplete and never too small. Allowances may
 * be nothing, or a credit.
 */
export const isPrice = ({ dollars }: PriceBook['materials'][number]): boolean => dollars > 0;
export const takesTime = ({ likely }: PriceBook['tasks'][number]): boolean => likely > 0;

/** What the price waits for where a labor-hour costs nothing. */
export const RATE = 'labor-hour';
/** Is there a rate to multiply hours with? */
export const hasRate = ({ dollarsPerCrewHour }: PriceBook): boolean => dollarsPerCrewHour > 0;
