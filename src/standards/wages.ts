import type { Standing } from './source';

/** Median hourly wage of electricians (occupation 47-2111), dollars: US Bureau of Labor Statistics, quoted by career-data sites. */
export const ELECTRICIAN_WAGE: readonly {
  readonly period: string;
  readonly medianPerHour: number;
  readonly standing: Standing;
}[] = [
  { period: 'May 2023', medianPerHour: 29.61, standing: 'one source' },
  { period: 'May 2024', medianPerHour: 29.98, standing: 'confirmed' },
];
/** Total compensation over wages in construction, June 2022 (Employer Costs for Employee Compensation). */
export const TOTAL_OVER_WAGES = 1.433;
/** Overhead of electrical contractors as a share of sales: trade journal, 2002. */
export const OVERHEAD_SHARE_OF_SALES = { small: 0.216, medium: 0.18, large: 0.15 } as const;

/** Markup on cost ↔ margin on price: m / (1 + m) and g / (1 − g). */
export const marginFromMarkup = (markup: number): number => markup / (1 + markup);
export const markupFromMargin = (margin: number): number => margin / (1 - margin);
