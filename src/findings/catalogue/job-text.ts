import { error } from '../entry';

const WRONG_FILE = 'check that this is the right file';

/** Why a job's text cannot be read at all. */
export const jobTextFindings = {
  'job-too-long': error(
    { what: ['characters', 'keys and values'], count: 'count?', most: 'count' },
    ({ what, count, most }) => ({
      message:
        count === null
          ? `the job holds more than ${most} ${what}; a job is a page of text`
          : `the job is ${count} ${what} long; a job is a page of text, at most ${most}`,
      hint: WRONG_FILE,
      got: count === null ? null : `${count} ${what}`,
      allowed: `at most ${most} ${what}`,
    }),
  ),
  'job-too-deep': error({}, () => ({ message: 'the job is nested deeper than any job needs', hint: WRONG_FILE })),
  'yaml-alias': error({ name: 'text' }, ({ name }) => ({
    message: `a job may not use YAML aliases (*${name})`,
    hint: 'write the value out',
  })),
  'yaml-anchor': error({ name: 'text' }, ({ name }) => ({
    message: `a job may not use YAML anchors (&${name})`,
    hint: 'remove it',
  })),
  'yaml-tag': error({ tag: 'text' }, ({ tag }) => ({
    message: `a job may not use YAML tags (${tag})`,
    hint: 'remove it; write the value alone',
  })),
  'key-twice': error({ key: 'text' }, ({ key }) => ({
    message: `“${key}” is written twice`,
    hint: 'keep one of the two',
  })),
  /** `slip` is the YAML library's code; `library` its own words, for a slip that is not among ours. */
  unreadable: error({ slip: 'text', library: 'text' }, ({ slip, library }) => {
    const [what, hint] = SLIPS.get(slip) ?? [library, 'mend this line; the starters show how a job is written'];
    return { message: `the job is not proper YAML or JSON: ${what}`, hint };
  }),
  /** `#18` without quotes: YAML begins a comment there. `means` what is probably meant: a sheet's gauge, or a screw. */
  'hash-comment': error({ key: 'text', number: 'text', means: ['gauge', 'screw'] }, ({ key, number, means }) => ({
    message: `${key} has no value: what follows the # is a comment`,
    hint: means === 'gauge' ? `if you mean the gauge, write ${number} ga` : `write it in quotes: "#${number}"`,
    got: `#${number}`,
  })),
  'more-mistakes': error({ rest: 'count' }, ({ rest }) => ({
    message: `and ${rest} more ${rest === 1 ? 'mistake' : 'mistakes'}`,
    hint: 'mend these first, then check again',
  })),
};

/** The commoner ways of getting YAML wrong, by the library's own codes: what is wrong, and what to do. */
const SLIPS: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['MULTIPLE_DOCS', ['a second job begins here, and a file holds one', 'put it in a file of its own']],
  ['TAB_AS_INDENT', ['a line begins with a tab', 'indent with spaces']],
  [
    'BAD_INDENT',
    [
      'a line is indented differently from its neighbours, or a { or [ is not closed',
      'line up the keys of one block; close every bracket',
    ],
  ],
  [
    'BLOCK_AS_IMPLICIT_KEY',
    [
      'there is a colon too many, or a line is indented differently from its neighbours',
      'one “key: value” to a line, the keys of one block lined up; quote text that holds a colon',
    ],
  ],
  ['MULTILINE_IMPLICIT_KEY', ['a key runs over two lines', 'put a colon after the key, on the same line']],
  ['MISSING_CHAR', ['a colon, comma or closing quote is missing', 'mend this line or the one before']],
  ['NON_STRING_KEY', ['a key must be a plain word', 'mend this line']],
  ['BAD_DIRECTIVE', ['a line may not begin with %', 'remove it']],
  ['BAD_SCALAR_START', ['text may not begin with @ or `', 'put it in quotes']],
  ['BAD_ALIAS', ['* and & have a meaning of their own in YAML', 'put the text in quotes']],
]);
