// How a cook says each command, in Spanish: fewer ways than in English, for no recogniser listens yet.
//
// The rule of the English book holds here too: nothing beside a full boil that is one word away from it.

import type { Term } from '../../machines/dialogue/answers.ts';
import type { CommandId } from '../../machines/dialogue/commands.ts';
import type { FigureId, QuestionId } from '../core/guidance.ts';
import type { SightId } from '../kitchen/sights.ts';
import { upTo } from './gaps.ts';
import { counted, numberBefore, numberWords } from './numbers.es.ts';
import type { Filling, Pattern } from './pattern.ts';
import { withBoth } from './phrases.canners.en.ts';
import { createPhraseBook, type PhraseLanguage } from './phrasebook.ts';
import { depths, shares, temperatures, weights } from './readings.es.ts';
import { spanishTerms } from './terms.es.ts';

const fullBoil = ['hierve a borbotones', 'está en pleno hervor [a borbotones]'];
const one = { n: 1 };

// One command a line, like a table, however wide.
// prettier-ignore
const patterns: Record<CommandId, readonly Pattern[]> = {
  'setup.ready': ['todo listo', 'todo está listo'],
  'mash.done': ['ya está machacada', 'la fruta está machacada', '{f} ya está machacada', 'todo está en la olla'],
  'heat.on': ['[el] fuego [está] encendido', 'encendí el fuego', 'encendí el fuego de {f}'],
  'heat.off': ['[el] fuego [está] apagado', 'apagué el fuego', 'apagué el fuego de {f}'],
  'pot.rollingBoil': [...fullBoil, 'la olla hierve a borbotones', '{f} hierve a borbotones'],
  'pot.stirred': ['he removido', 'removí la olla', 'removí la olla de {f}'],
  'pot.thick': ['está bien espeso', 'ya espesó bien', '{f} está bien espeso'],
  'pot.tooThick': ['está demasiado espeso', 'quedó demasiado espeso', '{f} está demasiado espeso'],
  'pot.caught': ['se pegó al fondo', 'se está quemando', 'se pegó la olla de {f}'],
  'pot.changed': ['está en olla limpia', 'lo pasé a una olla limpia', '{f} está en olla limpia'],
  'reading.taken': ['pesa {weight}', 'altura {depth}', 'temperatura {temp}', '[{f}] está a {share}', '[{f}] ha bajado a {share}'],
  'minutes.added': ['añade {minutes:minuto}', 'dame {few:minuto} más', 'añade {few:minuto} a {f}'],
  'skim.done': ['la espuma está retirada', 'ya espumé', 'espumé {f}'],
  'strain.done': ['ya está colado', 'ya lo colé', '{f} ya está colado'],
  'strain.skipped': ['sin colar', 'hoy no se cuela'],
  'blend.done': ['ya está triturado', 'está fino', '{f} ya está triturado'],
  'blend.skipped': ['dejarlo con trozos', 'hoy no se tritura'],
  'plate.cold': ['el plato está frío', 'tengo un plato frío'],
  'plate.spooned': ['está en el plato', 'puse una cucharada en el plato', '{f} está en el plato'],
  'plate.held': ['se sostiene en el plato', 'pasó la prueba del plato', '{f} pasó la prueba del plato'],
  'plate.runny': ['todavía está líquida', 'la raya se cierra', '{f} todavía está líquida'],
  'plate.tooThick': ['está demasiado espeso', 'quedó demasiado espeso', '{f} está demasiado espeso'],
  'pot.loosened': ['ya lo aligeré', 'ya está más suelto', 'aligeré {f}'],
  'jars.ready': ['los tarros están listos', 'los tarros están calientes y listos'],
  'jars.filled': ['{jars:tarro} llenos', 'llené {jars:tarro}', '{jars:tarro} de {f}'],
  'pot.more': ['hay más en la olla', 'queda otra carga', 'hay más {f} en la olla'],
  'ping.heard': ['oí un chasquido', 'bajó una tapa'],
  'rest.over': ['terminó el reposo', 'los tarros ya reposaron'],
  'seals.allHeld': ['todos los tarros sellaron', 'todos los tarros están sellados', 'sellaron todos los tarros de {f}'],
  'seals.failed': [['uno no selló', one], '{jars:tarro} sin sellar', ['no sellaron todos los tarros', {}]],
  'jars.putAway': ['todo está guardado', 'los tarros están guardados', 'los tarros de {f} están guardados'],
  'jars.emptied': ['de vuelta a la olla', 'vacié los tarros', '{f} de vuelta a la olla'],
  'jars.toFridge': ['van a la nevera', 'los pongo en la nevera', '{f} va a la nevera'],
  'jars.eaten': [['comimos un tarro', one], ['comimos un tarro de {f}', one], 'comimos {jars:tarro}'],
  'jars.givenAway': [['regalamos un tarro', one], ['regalamos un tarro de {f}', one], 'regalamos {jars:tarro}'],
  'jars.discarded': [['tiramos un tarro', one], ['tiramos un tarro de {f}', one], 'tiramos {jars:tarro}'],
  'jars.intoFridge': [['un tarro fue a la nevera', one], ['un tarro de {f} fue a la nevera', one], '{jars:tarro} a la nevera'],
  'jars.intoFreezer': [['un tarro fue al congelador', one], ['un tarro de {f} fue al congelador', one], '{jars:tarro} al congelador'],
  'batch.held': ['pausa para todo', 'tengo que salir de la cocina', 'pausa para {f}'],
  'batch.resumed': ['sigamos adelante', 'ya estoy de vuelta', 'sigamos con {f}'],
  'batch.stopped': ['abandonar esta tanda', 'dejar esta tanda para siempre', 'abandonar la tanda de {f}'],

  'canner.filled': ['la olla de conservas está llena', 'el agua está en la olla de conservas'],
  'canner.heatOn': ['la olla de conservas está al fuego', 'encendí la olla de conservas', '[el] fuego [está] encendido'],
  'canner.hot': ['la olla de conservas está caliente', 'el agua está caliente'],
  'jars.in': ['los tarros están dentro', 'todos los tarros están dentro', 'los tarros de {f} están dentro'],
  'canner.fullBoil': [...fullBoil, 'la olla de conservas hierve a borbotones'],
  'canner.boilDropped': ['bajó el hervor', 'dejó de hervir'],
  'canner.boilHolds': [...fullBoil, 'el pleno hervor se mantiene', 'sigue en pleno hervor'],
  'canner.waterLow': ['falta agua', 'se ven las tapas'],
  'canner.waterAdded': ['añadí agua hirviendo', 'rellené la olla de conservas', ['añadí agua y siguió hirviendo', { keptBoiling: true }], ['añadí agua y bajó el hervor', { keptBoiling: false }]],
  'jar.broke': ['se rompió un tarro', 'hay un tarro roto', 'se rompió un tarro de {f}'],
  'jars.out': ['los tarros están fuera', 'saqué los tarros', 'los tarros de {f} están fuera'],
  'canner.off': ['apagué la olla de conservas', 'la olla de conservas está apagada', '[el] fuego [está] apagado'],

  'boil.droppedEarlier': ['bajó hace {ago}', 'el hervor bajó hace {ago}'],
  'boil.saidTooEarly': ['dije pleno hervor antes de tiempo', 'puse el reloj antes de tiempo'],
  'last.when': ['eso fue hace {ago}', 'eso fue a {clock}'],
  'told.when': ['{past} hace {ago}', '{past} a {clock}'],
  'batch.mixedUp': ['esa era la otra tanda', 'era {f} y no {insteadOf}'],

  next: ['siguiente paso', 'ya está hecho', 'terminé con {f}'],
  yes: ['sí así es', 'sí estoy seguro', 'sí estoy segura'],
  no: ['no está mal', 'no es así', ['todavía no', { notYet: true }]],
  'go.back': ['volver un paso', 'deshacer eso'],
  repeat: ['dígalo otra vez', 'repita eso'],
  'how.long': ['cuánto tiempo queda', 'cuánto falta', 'cuánto falta para {f}'],
  'what.next': ['qué sigue ahora', 'qué hago ahora', 'qué sigue con {f}'],
  status: ['estado de todas las tandas', 'cómo vamos', 'estado de {f}'],
  plan: ['cuál es el plan', 'dígame el plan'],
  'cook.away': ['me ausento {away}', 'salgo a {leave} por {away}'],
  'cook.here': ['estoy aquí otra vez', 'ya no me voy'],
  help: ['qué puedo decir', 'necesito ayuda'],
  why: ['dígame por qué', 'por qué es eso'],
  'what.is': ['qué es {term}', 'qué significa {term}'],
  ask: ['{question}', 'por qué {figure}'],
  show: ['muéstreme cómo', 'muéstreme {sight}', ['quite el dibujo', { term: 'nothing' }]],
  'tell.more': ['cuénteme más', 'más sobre eso'],
  'say.more': ['más palabras por favor', 'dígame cada paso'],
  'say.less': ['menos palabras por favor', 'ya sé este paso'],
  'speak.slower': ['hable más despacio', 'más despacio por favor'],
  'speak.faster': ['hable más rápido', 'más rápido por favor'],
  'speak.louder': ['hable más alto', 'no le oigo bien'],
  'speak.softer': ['hable más bajo', 'no tan alto por favor'],
  hush: ['silencio por favor', 'deje de hablar'],
  'switch.batch': [['ir a la olla de conservas', { fruit: 'canner' }], 'ir a {f}', 'la tanda de {f}'],
};

const pasts: { [Command in CommandId]?: string } = {
  'heat.on': 'encendí el fuego',
  'heat.off': 'apagué el fuego',
  'pot.rollingBoil': 'la olla rompió a hervir',
  'pot.stirred': 'removí por última vez',
  'jars.in': 'entraron los tarros',
  'canner.fullBoil': 'empezó el pleno hervor',
  'jars.out': 'salieron los tarros',
};

const questions: { [Id in QuestionId]?: readonly string[] } = {
  lessSugar: ['puedo usar menos azúcar'],
  double: ['puedo hacer el doble'],
  honey: ['puedo usar miel'],
  altitude: ['importa la altitud'],
};
const figures: { [Id in FigureId]?: readonly string[] } = {
  headspace: ['el espacio libre'],
  process: ['el tiempo de proceso'],
  sugar: ['el azúcar'],
};
const sights: { [Id in SightId]?: readonly string[] } = {
  rollingBoil: ['un hervor a borbotones'],
  headspace: ['el espacio libre'],
  plateHeld: ['la prueba del plato'],
};

// Only where there are two canners: they are told apart by their number.
const ofTwo: { [Command in CommandId]?: readonly Pattern[] } = {
  'canner.filled': ['la {canner} está llena'],
  'canner.heatOn': ['la {canner} está al fuego', 'encendí la {canner}'],
  'canner.hot': ['la {canner} está caliente'],
  'jars.in': ['los tarros están en la {canner}', 'los tarros de {f} están en la {canner}'],
  'canner.fullBoil': ['la {canner} hierve a borbotones'],
  'canner.boilHolds': ['la {canner} hierve a borbotones', 'la {canner} sigue en pleno hervor'],
  'canner.boilDropped': ['la {canner} dejó de hervir', 'bajó el hervor en la {canner}'],
  'canner.waterLow': ['falta agua en la {canner}'],
  'canner.waterAdded': ['añadí agua hirviendo a la {canner}'],
  'jar.broke': ['se rompió un tarro en la {canner}'],
  'jars.out': ['los tarros están fuera de la {canner}'],
  'canner.off': ['apagué la {canner}'],
  'switch.batch': ['ir a la {aCanner}', 'la {aCanner}'],
};
const numberedCanners = [
  ['primera olla de conservas', 'first canner'],
  ['segunda olla de conservas', 'second canner'],
] as const;

const spanish: PhraseLanguage = {
  patterns: withBoth(patterns, ofTwo),
  numbered,
  gaps(name, _noun, bounds) {
    switch (name) {
      case 'canner':
        return (bounds.canners ?? 1) < 2
          ? []
          : numberedCanners.map(([words, canner]) => ({ words, slots: { canner } }));
      case 'aCanner':
        return (bounds.canners ?? 1) < 2
          ? []
          : numberedCanners.map(([words, fruit]) => ({ words, slots: { fruit } }));
      case 'ago':
        return [...upTo(10), 15, 20, 30].map((n) => ({
          words: counted(n, 'minuto'),
          slots: { agoMinutes: n },
        }));
      case 'past':
        return pastFillings(bounds.told);
      case 'clock':
        return (bounds.clock ?? [240, 250, 285]).map((clock) => ({
          words: clockWords(clock),
          slots: { clock },
        }));
      case 'away':
        return AWAY.map(([awayMinutes, words]) => ({ words, slots: { awayMinutes } }));
      case 'leave':
        return (bounds.leave ?? [300, 315, 330]).map((clock) => ({
          words: clockWords(clock),
          slots: { clock },
        }));
      case 'term':
        return asked(spanishTerms satisfies Record<Term, readonly string[]>);
      case 'question':
        return asked(questions);
      case 'figure':
        return asked(figures);
      case 'sight':
        return asked(sights);
      case 'weight':
        return weights(bounds);
      case 'depth':
        return depths(bounds);
      case 'temp':
        return temperatures(bounds);
      case 'share':
        return shares();
      default:
        throw new Error(`The Spanish phrase book knows no gap {${name}}.`);
    }
  },
};

function asked(forms: Readonly<Record<string, readonly string[] | undefined>>): Filling[] {
  return Object.entries(forms).flatMap(([term, ways = []]) =>
    ways.map((words) => ({ words, slots: { term } })),
  );
}

function pastFillings(told: readonly CommandId[] = Object.keys(pasts) as CommandId[]): Filling[] {
  return told.flatMap((what) => {
    const words = pasts[what];
    return words === undefined
      ? []
      : [{ words, slots: { what: what as NonNullable<Filling['slots']['what']> } }];
  });
}

const AWAY: readonly (readonly [number, string])[] = [
  ...[5, 10, 15, 20, 30, 40, 45].map((n) => [n, counted(n, 'minuto')] as const),
  [30, 'media hora'],
  [60, 'una hora'],
];

/** Minutes past twelve: "la una", "las cuatro y diez", "las cinco menos cuarto"; to five minutes. */
function clockWords(clock: number): string {
  const minute = clock % 60;
  const hour = (on: number) => {
    const n = ((Math.floor(clock / 60) + on + 11) % 12) + 1;
    return `${n === 1 ? 'la' : 'las'} ${numberBefore(n, 'f')}`;
  };
  const part = (n: number) => (n === 15 ? 'cuarto' : n === 30 ? 'media' : numberWords(n));
  if (minute === 0) return hour(0);
  return minute <= 30 ? `${hour(0)} y ${part(minute)}` : `${hour(1)} menos ${part(60 - minute)}`;
}

function numbered(n: number, noun: string | undefined): Filling {
  return { words: noun === undefined ? numberWords(n) : counted(n, noun), slots: { n } };
}

export const { allPhrases, openPhrases } = createPhraseBook(spanish);
