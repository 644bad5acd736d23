// What is answered to a cook's questions, held against what the guides print, the source named beside each.

import { describe, expect, it } from 'vitest';
import { guidanceOn, questionIds, type QuestionId } from '../../src/core/guidance.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sentencesIn, wordsIn } from '../words/grade.ts';

const us = createCatalogue('en', 'us');

function answerTo(id: QuestionId): { short: string; more: string } {
  const { params } = guidanceOn(id);
  return { short: us.text({ key: `ask.${id}`, params }), more: us.text({ key: `ask.${id}.more`, params }) };
}

/** What must stand in the answer, by the guide that prints it. "from memory" marks what was not read there. */
const printed: readonly (readonly [QuestionId, RegExp, string])[] = [
  [
    'lessSugar',
    /^Not in jam or jelly/,
    'MSU 01600551; MU GH1461: do not cut sugar in regular-pectin recipes',
  ],
  [
    'sweetener',
    /two to three weeks/,
    'NMSU E-314; NCHFP: refrigerate, use in 2-3 weeks unless a tested process exists',
  ],
  [
    'double',
    /^No\. One batch at a time.*soft/,
    'AIB-539 guide 1: one batch at a time; MSU 01600551: never double',
  ],
  ['skipLemon', /4 point 6|four point six/i, '21 CFR 114.3(a): acid food at pH 4.6 or below'],
  ['freshLemon', /bottled/i, 'USDA AIB-539: bottled, not fresh, where acid is for safety'],
  [
    'vinegar',
    /bottled lemon juice/i,
    'USDA AIB-539 guides 2, 3: lemon juice or citric acid is the tested dose',
  ],
  ['citricAcid', /quarter teaspoon for each pint/, 'USDA AIB-539 guides 2, 3: 1/4 tsp citric acid per pint'],
  ['citricAcid', /one tablespoon/, 'USDA AIB-539 guides 2, 3: 1 Tbsp lemon juice per pint'],
  ['mixFruit', /two to five fruits, each at least a fifth/, '21 CFR 150.110(b)(2)'],
  ['foamsOver', /Half a teaspoon of butter/, 'AIB-539 guide 7: 1/2 tsp butter limits foam'],
  ['potFull', /Half full at most/, 'jelly-making guides: a third to a half full (from memory)'],
  ['whichPot', /stainless steel or enamel/, 'extension texts (from memory)'],
  ['spits', /long sleeves/i, 'general burn prevention: long sleeves, long spoon (from memory)'],
  ['howDone', /two minutes/, 'AIB-539 guide 2: mounds after 2 min away from steam'],
  ['howDone', /No water rims it/, 'AIB-539 guide 2: no liquid rim on the plate'],
  [
    'thermometer',
    /eight degrees Fahrenheit above boiling water/,
    'AIB-539 guide 7: water boiling point + 8 F',
  ],
  ['blendHot', /half full, lid vented, towel/, 'general kitchen safety (from memory)'],
  ['whyBreak', /Hot fruit, hot jars/, 'Illinois Extension; AIB-539: hot food into hot jars'],
  ['dishwasher', /does not process/, 'AIB-539 guide 1: not recommended (from memory)'],
  ['oven', /^No\./, 'AIB-539 guide 1: oven canning not recommended (from memory)'],
  ['microwave', /^No\./, 'AIB-539 guide 1: microwave not recommended (from memory)'],
  ['openKettle', /For the shelf, yes, always/, 'AIB-539 guide 1: open kettle not recommended (from memory)'],
  ['inversion', /^No\./, 'AIB-539 guide 1: jar inversion not recommended (from memory)'],
  ['paraffin', /^No\./, 'extension texts since the 1980s: paraffin not recommended'],
  ['steamCanner', /forty-five minutes/, 'NCHFP / Univ. Wisconsin: 45 min at most, incl. altitude'],
  ['steamCanner', /4 point 6|four point six/i, 'NCHFP / Univ. Wisconsin: pH 4.6 or below'],
  ['steamCanner', /full plume.*never open/, 'MU; NCHFP: full column of steam; never open to add water'],
  ['steamCanner', /same as in water/, 'NCHFP: same tested times as boiling water'],
  ['reuseLids', /^No\. A new flat lid each time/, 'UMaine 4039; AIB-539: new lid each time'],
  [
    'bigJars',
    /Not for jam or jelly.*apple butter/,
    'USDA AIB-539 guides 2 and 7: no quart row for jam or jelly',
  ],
  ['smallJars', /Four and eight ounce/, 'AIB-539: 4-oz and 8-oz jars use the half-pint row'],
  ['boilJarsFirst', /less than ten minutes/, 'USDA AIB-539 guide 1: pre-sterilise when process < 10 min'],
  [
    'boilJarsFirst',
    /boil the empty jars ten minutes, and one more for each thousand feet/,
    'USDA AIB-539 guide 1',
  ],
  ['keepJarsHot', /180 degrees/, 'NCHFP / lid-maker practice, about 180 F (from memory)'],
  ['howFull', /a quarter inch/, 'Illinois Extension; AIB-539: 0.25 in for jam, jelly, butter'],
  ['howTight', /^Fingertip tight/, 'Illinois Extension'],
  ['wipeRim', /every rim/, 'UMaine 4039; AIB-539: wipe rim'],
  ['altitude', /1,000 feet/, 'AIB-539: first band ends at 1,000 ft'],
  ['whenTimeStarts', /full rolling boil/, 'USDA AIB-539 guide 1: vigorous boil, then start timer'],
  ['ifBoilStops', /whole time again/, 'NCHFP: return to boil and restart full time (from memory)'],
  ['howMuchWater', /^One inch to two inches over the lids/, 'USDA AIB-539 guide 1; Illinois Extension'],
  ['coldWater', /^No\. Boiling water only/, 'USDA AIB-539 guide 1: add boiling water'],
  ['waitFive', /five minutes/, 'Illinois Extension; NCHFP: 5 min before lifting'],
  ['waitFive', /not part of the time/, 'Illinois Extension; NCHFP'],
  ['touching', /Upright on the rack, not touching/, 'USDA AIB-539 guide 1'],
  ['longer', /softer/, 'Univ. Wisconsin B2909: may weaken the gel'],
  ['shorter', /^No\./, 'USDA AIB-539 guides 2 and 7: tested minutes'],
  ['coolFaster', /twelve hours/, 'USDA AIB-539 guide 1: 12 to 24 h undisturbed'],
  ['checkSeal', /must not move/, 'AIB-539 guide 1, test 1: press centre, no spring'],
  ['checkSeal', /clear ring is good/, 'AIB-539 guide 1, test 2: ringing note'],
  ['checkSeal', /it dips/, 'AIB-539 guide 1, test 3: lid concave'],
  ['unsealedJar', /three to seven days/, 'AIB-539: several days; K-State: one week; the shorter wins'],
  ['again', /twenty-four hours.*New lid, full time/, 'AIB-539 guide 1: within 24 h, new lid, same time'],
  ['tighten', /^No\./, 'Wisconsin B2909: do not retighten while hot'],
  ['ringsOff', /^Yes\. Rings off/, 'Illinois Extension: remove bands, wash, label'],
  ['label', /date/, 'Illinois Extension: label with date'],
  ['howLongKeeps', /twelve months between fifty degrees and seventy degrees/, 'NCHFP: 12 months at 50-70 F'],
  ['opened', /a month.*forty degrees/, 'NCHFP: 1 month at 40 F or below'],
  ['inFridge', /three weeks/, 'NCHFP uncooked jam: 3 weeks refrigerated'],
  ['freeze', /a year.*one and a half inches/, 'AIB-539: 1 1/2 in headspace; NCHFP: 1 year'],
  ['mold', /whole jar/, 'extension texts (mycotoxins): discard the whole jar'],
  ['darkened', /Light fruit and low sugar turn dark sooner/, 'NCHFP'],
  ['botulism', /4 point 6|four point six/i, '21 CFR 114.3(a)'],
  ['pumpkin', /^Never on the shelf/, 'NCHFP: no home canning, boiling-water or pressure'],
  ['whitePeach', /^Never on the shelf\. Freeze/, 'NCHFP / Univ. Wisconsin 2020: freeze only'],
  ['elderberry', /^Not on the shelf/, 'Univ. Wisconsin B2909: mean pH 4.92'],
  // The condition that stands beside the number, or the number does not hold.
  [
    'skipLemon',
    /put in what the recipe names/,
    'HG-56 peach jam: lemon juice stands in the recipe (from memory)',
  ],
  ['citricAcid', /figs and tomatoes/, 'USDA AIB-539 guides 2, 3: the dose is given for these'],
  ['thermometer', /without added pectin/, 'USDA HG-56 / AIB-539 guide 7: + 8 F is for no added pectin'],
  ['thermometer', /With pectin, time one minute/, 'AIB-539 guide 7: a timed minute, no temperature test'],
  ['howDone', /no added pectin.*degrees above boiling/, 'USDA HG-56 / AIB-539 guide 7'],
  ['steamCanner', /minutes for height, and forty-five minutes/, 'NCHFP: 45 min at most, incl. altitude'],
  [
    'boilJarsFirst',
    /From ten minutes up, clean hot jars/,
    'USDA AIB-539 guide 1: not needed at 10 min or longer',
  ],
  ['howLongKeeps', /^Processed and sealed/, 'NCHFP: sealed jars; not processed is not for the shelf'],
  ['howLongKeeps', /little sugar sooner/, 'NCHFP: low-sugar spreads darken sooner'],
  ['inFridge', /low acid one\./, 'extension advice: 1 to 2 weeks, the shorter (from memory)'],
  [
    'inFridge',
    /little sugar take two weeks/,
    'NMSU E-314; NCHFP: spreads without sugar 2 to 3 weeks, the shorter',
  ],
  ['notSet', /processed and sealed keeps/, 'NCHFP: only a processed jar is for the shelf'],
  ['darkened', /processed jar with a firm lid/, 'NCHFP: darkening is a matter of quality'],
  ['giveAway', /Only processed jars/, 'NCHFP: only a processed jar is for the shelf'],
  ['whitePeach', /as the plan says/, 'AIB-539 guide 7: yellow peaches by their row'],
  ['lowAcid', /banana, mango, papaya, melon, persimmon: a tested recipe only/i, 'Univ. California list'],
  [
    'lowAcid',
    /Fig, tomato and Asian pear need a tested amount/,
    'USDA AIB-539 guides 2, 3; Asian pear from memory',
  ],
  ['lowAcid', /tested/, 'Univ. California Master Food Preservers list: only tested acidified recipes'],
];

describe('the answers to a cook’s questions', () => {
  it('are at least sixty', () => {
    expect(questionIds.length).toBeGreaterThanOrEqual(60);
  });

  it.each(printed)('%s says %s: %s', (id, says) => {
    const { short, more } = answerTo(id);
    expect(`${short} ${more}`).toMatch(says);
  });

  it.each(questionIds)('%s: twelve words or fewer, two sentences more, and who says so', (id) => {
    const { short, more } = answerTo(id);
    expect(wordsIn(short), short).toBeLessThanOrEqual(12);
    expect(sentencesIn(more), more).toBeLessThanOrEqual(2);
    expect(guidanceOn(id).sources.join()).toMatch(/[A-Za-z]{3}/);
  });

  // NCHFP and AIB-539: no home process for these, and none for jars that leak, are mouldy or were not processed.
  it.each<QuestionId>([
    'pumpkin',
    'whitePeach',
    'elderberry',
    'mold',
    'bulging',
    'looseLater',
    'smellsOff',
    'openKettle',
    'unsealedJar',
    'shortJar',
    'buckled',
  ])('%s never invents a shelf', (id) => {
    const { short } = answerTo(id);
    expect(short).toMatch(/[Nn]ever|[Nn]ot on|fridge|Throw|throw/);
    expect(short).not.toMatch(/safe|keeps? on the shelf/);
  });

  it('lets no jar be tasted that may have spoiled', () => {
    for (const id of ['mold', 'bulging', 'looseLater', 'smellsOff'] as const)
      expect(answerTo(id).short).toMatch(/not (open or )?taste/);
  });

  // A page was read for the number beside it, but not for what these say.
  it.each<QuestionId>(['buckled', 'vinegar', 'botulism', 'ifBoilStops', 'leaked', 'openKettle'])(
    '%s is told as remembered',
    (id) => expect(guidanceOn(id).sources[0]).toMatch(/^from memory/),
  );

  it('says no jar may stand on the shelf because of its lid or its smell alone', () => {
    for (const id of questionIds) {
      const { short, more } = answerTo(id);
      for (const sentence of `${short} ${more}`.split(/[.;] /))
        if (
          /\b(keeps?|is good|for the shelf)\b/.test(sentence) &&
          /\bseal(ed)?\b|firm/.test(sentence) &&
          id !== 'leaked'
        )
          expect(sentence, id).toMatch(/process|unseal|did not|failed/i);
    }
  });
});

describe('how long a planned batch keeps', () => {
  const es = createCatalogue('es', 'metric');
  // NCHFP: a month once opened is for a full-sugar cooked jam or jelly; uncooked jam, once opened, a few days.
  it('gives a month once opened to full sugar only, and thawed jars a few days', () => {
    const shelf = { key: 'screen.plan.bestBy.shelf', params: { low: '50', high: '70' } };
    const freezer = { key: 'screen.plan.bestBy.freezer', params: { room: '1 1/2 in' } };
    expect(us.text(shelf)).toMatch(/full-sugar jam a month, others less/);
    expect(es.text(shelf)).toMatch(/con todo su azúcar un mes, lo demás menos/);
    expect(us.text(freezer)).toMatch(/thawed and opened a few days/);
    expect(es.text(freezer)).toMatch(/descongelado y abierto, unos días/);
  });

  // AIB-539 guide 1: press, tap, look. A jar lifted by its lid is in none of them.
  it('tests a seal by what the guide prints', () => {
    expect(us.text({ key: 'batch.checkSeals.why' })).toMatch(/Press.*dips.*rings/);
    expect(es.text({ key: 'batch.checkSeals.why' })).toMatch(/Apriete.*hundida.*suena clara/);
  });
});

describe('the picture of a lid that is up', () => {
  // AIB-539 guide 1: unsealed after the rest, the fridge; loose on the shelf, never tasted (from memory).
  it('does not send a jar to the fridge that came up on the shelf, in either tongue', () => {
    for (const key of ['see.lidUp.said', 'see.lidUp.alt']) {
      expect(us.text({ key })).toMatch(/fridge.*[Ll]ater.*throw it away/);
      expect(createCatalogue('es', 'metric').text({ key })).toMatch(/nevera.*[Dd]espués.*tírelo/);
    }
  });
});

describe('a jar whose time was broken', () => {
  // AIB-539 guide 1: within 24 hours, new lid, the full time.
  it.each([
    'batch.wentCold.why',
    'why.batch.unprocessed.more',
    'why.said.batch.wentCold.more',
    'why.said.batch.notServed.more',
    'why.said.kitchen.notServed.more',
  ])('%s says until when it may be boiled again, in both tongues', (key) => {
    expect(us.text({ key })).toMatch(/within a day/i);
    expect(createCatalogue('es', 'metric').text({ key })).toMatch(/antes de un día/i);
  });
});

describe('the heat at which a spread sets', () => {
  // USDA HG-56 / AIB-539 guide 7: + 8 F without added pectin; with it a timed minute and no test of heat.
  it.each(['teach.jam.more', 'teach.settingPoint.more', 'why.figure.finishTemp.more'])(
    '%s is told for no added pectin only, in both tongues',
    (key) => {
      const params = { jamSolids: 65 };
      expect(us.text({ key, params })).toMatch(/no (added )?pectin/);
      expect(createCatalogue('es', 'metric').text({ key, params })).toMatch(/(sin|no se añadió) pectina/i);
    },
  );
});
