export type {};
