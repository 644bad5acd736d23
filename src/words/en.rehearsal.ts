// A kitchen without fruit, in English: what you would see, smell and weigh, what hands can do, and the review.

export const rehearsalWords = {
  'sense.pot.still': 'The top lies still and flat. It is not hot yet.',
  'sense.pot.steaming': 'Steam curls off it. The top is still, with no bubbles.',
  'sense.pot.simmer': 'A few small bubbles rise along the wall. The top only trembles.',
  'sense.pot.boil': 'Bubbles break in many places. The spoon goes through, and it falls flat behind it.',
  'sense.pot.rolling':
    'Big bubbles break all over. The whole top heaves and tumbles, and it boils on behind the spoon.',
  'sense.pot.foam': 'Pale foam lies on it.',
  'sense.pot.catching': 'It smells a little burnt, and the spoon feels rough below.',
  'sense.pot.burnt': 'It smells like burnt sugar. A dark crust sits on the floor.',
  'sense.pot.ranOver': 'Some of it has run over the rim.',
  'sense.spoonful.thin': 'Thin drops run off the spoon one by one.',
  'sense.spoonful.coats': 'It coats the spoon, and juice still runs from its edge.',
  'sense.spoonful.mounds': 'A spoonful mounds and stays. A broad sheet hangs from its edge.',
  'sense.scale': 'The pot holds {massKg}.',
  'sense.spoon': 'It stands {depthM} deep on the spoon.',
  'sense.plate.cold': 'The plate is freezing cold, and empty.',
  'sense.plate.warm': 'The plate is not cold.',
  'sense.plate.hot': 'The spoonful is still hot. It tells nothing yet.',
  'sense.plate.held': 'The line stays open. The edge is clean, with no wet rim.',
  'sense.plate.runny': 'A flat, wide puddle. The line has run together, and thin juice creeps from the edge.',
  'sense.plate.tooThick': 'It stands up like paste and hardly moves under the finger.',
  'sense.canner.still': 'The water lies still. It is not hot yet.',
  'sense.canner.steaming': 'Steam curls off the water, near a simmer, with no bubbles.',
  'sense.canner.simmer': 'A few small bubbles rise. The water only trembles.',
  'sense.canner.boil': 'Bubbles break in many places, and the top falls flat between them.',
  'sense.canner.rolling':
    'Big bubbles break all over, and the whole top heaves and tumbles. It boils on and on.',
  'sense.canner.flat': 'The water over the lids lies flat, with one or two small bubbles.',
  'sense.canner.covered': 'The water stands over the lids.',
  'sense.canner.low': 'The water does not cover the lids by an inch.',
  'sense.canner.broken': 'A jar has broken in there.',
  'sense.jars.none': 'No jars stand on the towel.',
  'sense.jars.hot':
    '{jars, plural, one {# jar} other {# jars}} on the towel, still hot. The lids tell nothing yet.',
  'sense.jars.lids':
    '{down, plural, =0 {} one {# lid is drawn down and does not move. } other {# lids are drawn down and do not move. }}{up, plural, =0 {} one {# lid stands up and springs back.} other {# lids stand up and spring back.}}',
  'sense.jars.broken': '{jars, plural, one {# jar} other {# jars}} broke.',

  'rehearse.title': 'The stove, without fruit',
  'rehearse.open': 'Practice',
  'rehearse.pot': 'The pot',
  'rehearse.canner': 'The canner',
  'rehearse.plate': 'The plate',
  'rehearse.jars': 'The jars',
  'rehearse.scale': 'Weigh it',
  'rehearse.spoon': 'Dip the spoon',
  'rehearse.stir': 'Stir',
  'rehearse.heat.pot': 'Heat under the pot',
  'rehearse.heat.canner': 'Heat under the canner',
  'rehearse.heat.off': 'Off',
  'rehearse.heat.warm': 'Barely',
  'rehearse.heat.low': 'Low',
  'rehearse.heat.high': 'High',
  'rehearse.says':
    'No fruit, no heat, but it boils and burns as a real one. What you tell the page is done here too. Look for yourself before you tell it.',
  'rehearse.review': 'How it went',
  'rehearse.grave': 'Not safe:',
  'rehearse.tell': 'Tell me aloud what I would see, hear and smell',
  'rehearse.nothing':
    'The pretend pot of a batch stands here from its plan on, until the page is opened anew.',

  'review.clean': 'Nothing was late and nothing was missed.',
  'review.boilTooEarly':
    'You said rolling boil before it was one. Foam and fruit would not have been hot right through.',
  'review.boilLate': 'It rolled {minutes} before you said so. It may have foamed over meanwhile.',
  'review.unstirred': 'The pot was left {minutes} without a stir. What lies still on the bottom burns.',
  'review.caught': 'It began to catch. A little longer, and the whole pot would have tasted of it.',
  'review.burnt': 'It burnt. That batch would have gone into the bin.',
  'review.ranOver': '{massKg} ran over the rim: a lost jar, and a stove to scrub.',
  'review.tooDry': 'It boiled on past its set: {percent} parts in a hundred less in the jars, and stiff.',
  'review.heatLeftOn': 'The heat under the empty pot was left on.',
  'review.plateWarm': 'The plate was not cold, so it could not tell.',
  'review.heldRunny': 'The plate was still runny when you said it held. It would not have set.',
  'review.heldThick': 'It was too thick when you said it held: a splash of hot water would have helped.',
  'review.clockTooEarly':
    'You said full boil before it was one. The time would not have counted: not safe for the shelf.',
  'review.clockLate': 'The canner boiled {minutes} before you said so. Safe, and softer than need be.',
  'review.boilLostUnsaid':
    'The boil was lost and nobody said so. That time does not count: not safe for the shelf.',
  'review.unserved':
    'The jars had {minutes, plural, one {# minute} other {# minutes}} at an unbroken full boil, and {wanted} are published. Not safe for the shelf.',
  'review.broken': '{jars, plural, one {# jar} other {# jars}} broke: cold glass and hot fruit.',
  'review.lidsUpUnsaid':
    '{jars, plural, one {# lid was} other {# lids were}} up when you said all sealed. On the shelf it could have made somebody ill.',
} as const satisfies Record<string, string>;
