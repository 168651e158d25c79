import { isRequiredIn, type RuleId, sectionOf } from '../../standards/sections';
import { EDITIONS } from '../../units/types';
import { checkWords as say } from '../../words/en/check';
import table from '../parts/table.module.css';
import { useJob } from '../selected';

/** Where a rule stands in each code year, how firm that is, and which year is in force here. */
export const Sections = ({ rule }: { readonly rule: RuleId }) => {
  const { edition } = useJob().code;
  return (
    <table className={table.table}>
      <caption>{say.sectionsTitle}</caption>
      <tbody>
        {EDITIONS.map((year) => {
          const { section, standing } = sectionOf(rule, year);
          const asked = isRequiredIn(rule, year);
          return (
            <tr key={year} className={year === edition ? table.rowOn : undefined}>
              <th scope="row">{say.nec({ edition: year })}</th>
              <td>{asked ? section : say.notAsked}</td>
              <td>
                <small>
                  {asked ? say.standing[standing] : ''}
                  {year === edition ? ` ${asked ? '· ' : ''}${say.inForce}` : ''}
                </small>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
