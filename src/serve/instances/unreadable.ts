/** Why a text cannot be read, for whoever gave the file. */
export class Unreadable extends Error {}
