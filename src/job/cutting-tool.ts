/** Ways of cutting the boards. */
export const cuttingTools = ['jigsaw', 'router', 'laser'] as const;
export type CuttingTool = (typeof cuttingTools)[number];
