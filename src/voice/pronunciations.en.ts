// Words of the preserving kitchen that the pronouncing dictionary lacks, or says in one way where people say it in two.
// Common practice, no source: transcribed by ear in the dictionary's own alphabet.

export const supplement: Readonly<Record<string, readonly string[]>> = {
  apricot: ['EY P R IH K AA T', 'AE P R IH K AA T'],
  apricots: ['EY P R IH K AA T S', 'AE P R IH K AA T S'],
  crabapple: ['K R AE B AE P AH L'],
  crabapples: ['K R AE B AE P AH L Z'],
  damson: ['D AE M Z AH N'],
  damsons: ['D AE M Z AH N Z', 'D AE M S AH N Z'],
  elderberry: ['EH L D ER B EH R IY'],
  elderberries: ['EH L D ER B EH R IY Z'],
  gooseberry: ['G UH Z B ER IY', 'G UW S B EH R IY'],
  greengage: ['G R IY N G EY JH'],
  headspace: ['HH EH D S P EY S'],
  loganberry: ['L OW G AH N B EH R IY'],
  medlars: ['M EH D L ER Z'],
  nectarine: ['N EH K T ER IY N'],
  quinces: ['K W IH N S IH Z'],
  raspberry: ['R AE Z B EH R IY', 'R AA Z B R IY'],
  raspberries: ['R AE Z B EH R IY Z', 'R AA Z B R IY Z'],
  resealed: ['R IY S IY L D'],
  strawberry: ['S T R AO B R IY'],
  strawberries: ['S T R AO B R IY Z'],
  tomatillo: ['T OW M AH T IY OW', 'T OW M AH T IH L OW'],
  unsealed: ['AH N S IY L D'],
};
