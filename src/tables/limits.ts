// Between which limits may each figure of a cook lie, and what is said of one that does not?
//
// The limits are of a home kitchen (engineering judgement, no source) where nothing else stands beside them.

export interface Limit {
  /** What is said where there is no number. */
  ask: string;
  least: number;
  /** `least` itself is too little. */
  open?: true;
  tooLittle: string;
  most: number;
  tooMuch: string;
}

/** More than this is a factory's day: 100 kg, 220 lb. */
export const MOST_FRUIT_KG = 100;

const share = (what: string, least: number, most: number): Limit => ({
  ask: `${what} must be a number in per cent.`,
  least,
  tooLittle: `${what} must be at least ${least} %.`,
  most,
  tooMuch: `${what} must be at most ${most} %.`,
});

const price = (what: string): Limit => ({
  ask: `The price of ${what} must be a number.`,
  least: 0,
  tooLittle: `The price of ${what} cannot be less than nothing.`,
  most: 100000,
  tooMuch: `The price of ${what} is too high to be true.`,
});

export const limits = {
  juiceMassKg: {
    ask: 'Say how much juice there is, in kilograms.',
    least: 0,
    open: true,
    tooLittle: 'The juice must weigh more than nothing: weigh it and enter the weight.',
    most: MOST_FRUIT_KG,
    tooMuch: `That is more juice than a home kitchen can cook: enter at most ${MOST_FRUIT_KG} kg.`,
  },
  /** The shore of the Dead Sea lies about 430 m below the sea, Everest 8,849 m above it. */
  elevationM: {
    ask: 'Say how high above the sea your kitchen is, in metres.',
    least: -450,
    tooLittle: 'No kitchen is that low: check the altitude of your kitchen.',
    most: 8849,
    tooMuch: 'That is higher than Everest (8,849 m, 29,032 ft): check the altitude of your kitchen.',
  },
  lemonMl: {
    ask: 'Say how much lemon juice, in millilitres.',
    least: 0,
    tooLittle: 'Lemon juice cannot be less than none.',
    most: 5000,
    tooMuch: 'That is more than five litres of lemon juice: check the amount.',
  },
  lemonKg: {
    ask: 'Say how much lemon juice, in kilograms.',
    least: 0,
    tooLittle: 'Lemon juice cannot be less than none.',
    most: 5,
    tooMuch: 'That is more than five kilograms of lemon juice: check the amount.',
  },
  citricKg: {
    ask: 'Say how much citric acid, in kilograms.',
    least: 0,
    tooLittle: 'Citric acid cannot be less than none.',
    most: 0.5,
    tooMuch: 'That is more than half a kilogram of citric acid: check the amount.',
  },
  potDiameterM: {
    ask: 'Say how wide the pot is, in metres.',
    least: 0.08,
    tooLittle: 'The pot must be at least 8 cm (3 in) wide inside.',
    most: 0.8,
    tooMuch: 'The pot must be at most 80 cm (31 in) wide inside.',
  },
  potHeightM: {
    ask: 'Say how high the pot is, in metres.',
    least: 0.03,
    tooLittle: 'The pot must be at least 3 cm high.',
    most: 0.8,
    tooMuch: 'The pot must be at most 80 cm high.',
  },
  potMassKg: {
    ask: 'Say how much the empty pot weighs, in kilograms.',
    least: 0,
    tooLittle: 'The pot cannot weigh less than nothing.',
    most: 30,
    tooMuch: 'The empty pot weighs at most 30 kg.',
  },
  burnerW: {
    ask: 'Say how strong the burner is, in watts.',
    least: 200,
    tooLittle: 'The burner must give at least 200 W, or nothing will boil.',
    most: 20000,
    tooMuch: 'The burner must give at most 20,000 W (68,000 BTU/h).',
  },
  fruitSolidsPct: share('The refractometer reading of the fruit', 0.5, 80),
  preparedKg: {
    ask: 'Say how much the prepared fruit weighs, in kilograms.',
    least: 0,
    open: true,
    tooLittle: 'The prepared fruit must weigh more than nothing.',
    most: MOST_FRUIT_KG,
    tooMuch: `The prepared fruit weighs at most ${MOST_FRUIT_KG} kg.`,
  },
  waterBoilsC: {
    ask: 'Say at how many degrees Celsius your water boils.',
    least: 68,
    tooLittle: 'Water boils at 68 C or more, even on Everest: check the thermometer.',
    most: 103,
    tooMuch: 'Water boils at 103 C at the most: check the thermometer.',
  },
  fruitPH: {
    ask: 'The pH of the fruit must be a number.',
    least: 1.5,
    tooLittle: 'No fruit is below pH 1.5: check the meter.',
    most: 8,
    tooMuch: 'No fruit is above pH 8: check the meter.',
  },
  liquidKg: {
    ask: 'Say how much liquid goes in, in kilograms.',
    least: 0,
    open: true,
    tooLittle: 'The added liquid must weigh more than nothing.',
    most: 50,
    tooMuch: 'At most 50 kg of liquid can be added.',
  },
  liquidSolidsPct: share('The solids of the added liquid', 0, 80),
  fruitPrice: price('the fruit'),
  sugarPrice: price('the sugar'),
  acidPrice: price('the acid'),
  lidPrice: price('a lid'),
  jarPrice: price('a jar'),
  energyPrice: price('a kilowatt hour'),
  sugarKg: {
    ask: 'Say how much sugar, in kilograms.',
    least: 0,
    tooLittle: 'The sugar cannot weigh less than nothing.',
    most: 300,
    tooMuch: 'That is more sugar than a home kitchen can cook: check the weight.',
  },
  endPct: share('The solids to end at', 5, 80),
  jarsPerLoad: {
    ask: 'Say how many jars the canner holds.',
    least: 1,
    tooLittle: 'The canner must hold at least one jar.',
    most: 60,
    tooMuch: 'The canner holds at most 60 jars.',
  },
} as const satisfies Record<string, Limit>;
