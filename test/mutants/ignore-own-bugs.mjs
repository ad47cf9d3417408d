// Tells StrykerJS to leave alone what only a bug of our own could reach: `throw new InternalError(…)` and the condition that guards it.
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const throwsOwnBug = (node) =>
  node?.type === 'BlockStatement'
    ? node.body.length === 1 && throwsOwnBug(node.body[0])
    : node?.type === 'ThrowStatement' &&
      node.argument.type === 'NewExpression' &&
      node.argument.callee.name === 'InternalError';

export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, 'own-bugs', {
    shouldIgnore: ({ node }) =>
      throwsOwnBug(node) || (node.type === 'IfStatement' && throwsOwnBug(node.consequent))
        ? 'only a bug of our own gets here'
        : undefined,
  }),
];
