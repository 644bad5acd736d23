// What must be understood at the least, word for word: the sentences every cook may count on.

const SENTENCES = `rolling boil; full boil; it is at a full rolling boil; the boil dropped; it stopped boiling; next; next step; done;
that is done; say that again; repeat that; go back; how much time is left; how long; what is next; plate test passed; it holds;
it is still runny; it is thick enough; too thick; the jars are in; the jars are out; all jars sealed; one did not seal;
three did not seal; add seven minutes; twelve more minutes; stop talking; hush; yes; yes that is right; no; no that is wrong; why;
what is a rolling boil; what is headspace; start the {f} batch; switch to {f}; {f} next; {f} is done; status; status of all batches;
nine jars filled; hold everything; the foam is off; foam is off; heat is on; heat is off; help; water is low; the {f} is runny;
the {f} is thick enough; how long for the {f}`;

/** With each fruit in its turn. */
export function saidAtLeast(fruits: readonly string[]): string[] {
  return SENTENCES.split(';')
    .map((sentence) => sentence.replace(/\s+/g, ' ').trim())
    .map((sentence, index) => sentence.replaceAll('{f}', fruits[index % fruits.length]!));
}
