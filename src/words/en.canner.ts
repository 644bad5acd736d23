// What the canner says, in English: ICU message format, one sentence or two, the verb first.
//
// Quantities come as SI numbers in parameters named by their unit and are written plainly, {minutes};
// the catalogue says them in the cook's units: ...Kg, depthM, ...TempC, minutes, ...Minutes, volumeL,
// headspaceMm, elevationM, seconds. {aboutMinutes} rounds to what a person can hold and says "about".
// Plain numbers and the # of a plural are said in words up to ninety-nine.

export const cannerWords = {} as const satisfies Record<string, string>;
