import { lengthTroubles, type LengthTrouble } from '../../base/units';
import { error } from '../entry';

/** Why a text is no length. */
const LENGTH_TROUBLES: Readonly<Record<LengthTrouble, string>> = {
  'too long': 'that is too long to be a length',
  missing: 'a length is missing',
  comma: 'write a decimal point, not a comma',
  'no length': 'not a length',
  'zero under the line': 'a fraction cannot have 0 under the line',
};

const README = 'see the job file reference in the README';

/** What is wrong with the values of a job, field by field. `got` is the value as the maker wrote it, shortened. */
export const jobFindings = {
  'too-few': error({ least: 'count' }, ({ least }, { at }) => ({
    message: `${at} needs at least ${least} ${least === 1 ? 'entry' : 'entries'}`,
    hint: 'add one, or leave the block out',
    allowed: `at least ${least}`,
  })),
  'too-many': error({ most: 'count' }, ({ most }, { at }) => ({
    message: `${at} may have at most ${most} entries`,
    hint: 'split the job',
    allowed: `at most ${most}`,
  })),
  'bad-value': error({ got: 'text', near: 'text?', allowed: 'list' }, ({ got, near, allowed }, { at }) => ({
    message: `${at} cannot be ${got}`,
    hint: near === null ? (allowed === '' ? README : `write one of ${allowed}`) : `did you mean “${near}”?`,
    got,
    allowed: allowed === '' ? null : allowed,
  })),
  'unknown-key': error(
    { key: 'text', within: 'field', near: 'text?', known: 'list' },
    ({ key, within, near, known }) => ({
      message: `there is no “${key}” in ${within === '' ? 'a job' : within}`,
      hint: near === null ? 'remove it' : `did you mean “${near}”?`,
      got: key,
      allowed: known === '' ? null : known,
    }),
  ),
  /** `meant` is the key with the number that was probably meant. */
  'decimal-comma': error({ key: 'text', meant: 'text?' }, ({ key, meant }) => ({
    message: `“${key}” after a comma is no part of the number before it`,
    hint: `write a decimal point, not a comma${meant === null ? ', as in 1.5' : `: ${meant}`}`,
    got: key,
  })),
  missing: error({ holds: 'list' }, ({ holds }, { at }) => ({
    message: `${at} is missing`,
    hint: holds === '' ? 'add it; the starters show how' : `add it, with ${holds}; the starters show how`,
  })),
  /** `mend`: what to do, by what was wanted; `keys` are those of the block wanted. */
  'wrong-kind': error(
    { got: 'text', wanted: 'text', mend: ['comma', 'quote', 'bare number', 'block', 'look up'], keys: 'list' },
    ({ got, wanted, mend, keys }, { at }) => ({
      message: `${at} should be ${wanted}, not ${got}`,
      hint: {
        comma: 'write a decimal point, not a comma',
        quote: `put it in quotes: "${got}"`,
        'bare number': 'write the number alone, without unit or quotes',
        block: `write it as a block with ${keys}`,
        'look up': README,
      }[mend],
      got,
      allowed: wanted,
    }),
  ),
  'title-with-slash': error({ got: 'text' }, ({ got }) => ({
    message: 'a title may not hold slashes: it names the output folder',
    hint: 'write “and” or a dash',
    got,
  })),
  'title-of-dots': error({ got: 'text' }, ({ got }) => ({
    message: 'a title needs letters: it names the output folder',
    hint: 'say what the part is',
    got,
  })),
  'empty-name': error({}, (_, { at }) => ({ message: `${at} is empty`, hint: 'say what it is' })),
  'name-too-long': error({ length: 'count', most: 'count' }, ({ length, most }, { at }) => ({
    message: `${at} is ${length} characters long`,
    hint: 'shorten it',
    got: `${length} characters`,
    allowed: `at most ${most}`,
  })),
  'control-characters': error({ got: 'text' }, ({ got }, { at }) => ({
    message: `${at} holds characters that cannot be printed`,
    hint: 'type it again on one line',
    got,
  })),
  /** `most` is null where there is no upper end; `gauge` is the gauge a sheet's thickness may be meant as. */
  'out-of-range': error(
    { is: 'measure', least: 'measure', most: 'measure?', got: 'text', gauge: 'count?' },
    ({ is, least, most, got, gauge }, { at }) => {
      const allowed = most === null ? `at least ${least}` : `${least} to ${most}`;
      return {
        message: `${at} is ${is}; it must be ${allowed}`,
        hint: gauge === null ? 'check the number and its unit' : `if you mean the gauge, write ${gauge} ga`,
        got,
        allowed,
      };
    },
  ),
  'not-whole': error({ is: 'number', least: 'count', most: 'count' }, ({ is, least, most }, { at }) => ({
    message: `${at} is ${is}: they are counted in whole ones`,
    hint: 'write a whole number',
    got: is,
    allowed: `${least} to ${most}`,
  })),
  'bad-force': error({ got: 'text', example: 'force' }, ({ got, example }, { at }) => ({
    message: `${at} is no force: ${got}`,
    hint: `write a number with its unit, as in ${example}`,
    got,
  })),
  'bad-length': error(
    { got: 'text', reason: lengthTroubles, example: 'length' },
    ({ got, reason, example }, { at }) => ({
      message: `${at} is ${got}: ${LENGTH_TROUBLES[reason]}`,
      hint: `write a number or fraction with its unit, as in ${example}`,
      got,
    }),
  ),
  'gauge-for-length': error({ got: 'text' }, ({ got }, { at }) => ({
    message: `${at} cannot be a gauge`,
    hint: 'write a length; gauges are for the sheet’s thickness',
    got,
  })),
  /** `least` and `most` are the table's ends; null where the metal is not sold by gauge. */
  'unknown-gauge': error(
    { gauge: 'count', metal: 'text', least: 'count?', most: 'count?' },
    ({ gauge, metal, least, most }) => ({
      message: least === null ? `${metal} is not sold by gauge` : `${gauge} ga is not in the gauge table of ${metal}`,
      hint: 'write the thickness as a length',
      got: `${gauge} ga`,
      allowed: least === null || most === null ? 'a length' : `${least} to ${most} ga`,
    }),
  ),
  'unknown-metal': unknown('metal'),
  'unknown-board': unknown('board'),
  'unknown-screw': unknown('screw'),
  'unknown-fastener': unknown('fastener'),
  'unknown-colour': error({ got: 'text', names: 'list' }, ({ got, names }, { at }) => ({
    message: `${at} is no colour: ${got}`,
    hint: 'write a name from the list, or #rrggbb',
    got,
    allowed: `${names}, or #rrggbb`,
  })),
};

/** A name that is in none of the tables' rows; `near` are those that may be meant, nearest first, `known` all. */
function unknown(kind: string) {
  return error({ got: 'text', near: 'choices', known: 'list' }, ({ got, near, known }) => ({
    message: `there is no ${kind} called “${got}” in the tables`,
    hint: near === '' ? `bendbuck ${kind}s lists what there is` : `did you mean ${near}?`,
    got,
    allowed: known,
  }));
}
