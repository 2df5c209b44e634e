import type { Reasons } from '../process.ts';

/**
 * Why each process shows each kind of sign: clauses that complete "because ...". Source: Amato and Russell, Neuromuscular
 * Disorders (recalled); the wording is ours.
 */
export const reasonsOf = {
  longAxons: {
    strength: 'the longest motor axons fail first',
    bulk: 'muscle wastes where its long motor axons have died',
    feeling: 'the longest sensory axons fail first',
    reflex: 'its arc runs in long axons, which fail first',
    coordination: 'the far joints no longer report where they are',
    autonomic: 'thin autonomic fibres are among the axons that fail',
    spared: 'its axons are not long enough to have failed',
  },
  slowAxons: {
    strength: 'the longest motor axons fail first',
    bulk: 'muscle wastes where its long motor axons have died',
    feeling: 'the longest sensory axons fail first',
    reflex: 'conduction is slow in every arc, so that the volley arrives scattered',
    spared: 'its axons conduct slowly but have not failed',
  },
  rootsAndNerves: {
    strength: 'motor roots and nerves are affected along their whole length, near and far alike',
    feeling: 'large sensory fibres are affected in roots and nerves',
    reflex: 'the volley round the arc is blocked or arrives scattered',
    coordination: 'the afferents from muscle spindles, which steer movement, are lost',
    head: 'cranial nerves are affected like the roots',
    autonomic: 'autonomic fibres in roots and nerves are affected with the others',
    spared: 'its fibres are not among those affected so far',
  },
  ganglia: {
    feeling: 'sensory cells of its ganglion are lost, whatever the length of their axons',
    reflex: 'its arc has lost the sensory cells',
    coordination: 'movement has lost the sense that steers it',
    head: 'the trigeminal ganglion loses cells like those of the roots',
    strength: 'motor cells are not affected',
    spared: 'only sensory cells are affected',
  },
  motorCells: {
    strength: 'motor cells that serve it are lost',
    bulk: 'muscle wastes when its motor cells are lost',
    twitching: 'motor units twitch while their cells are dying',
    reflex: 'its arc has lost motor cells',
    release: 'motor cells of the cortex are lost, and reflexes and tone are let go of',
    head: 'motor cells of the brainstem, and of the cortex above them, are lost',
    spared: 'the cells that serve it are kept so far',
  },
  lowerMotorCells: {
    strength: 'anterior horn cells that serve it are lost',
    bulk: 'muscle wastes when its anterior horn cells are lost',
    twitching: 'motor units twitch while their cells are dying',
    reflex: 'its arc has lost anterior horn cells',
    head: 'motor cells of the brainstem are lost as well',
    spared: 'the cells that serve it are kept',
  },
  upperMotorCells: {
    strength: 'motor cells of the cortex that command it are lost',
    release: 'motor cells of the cortex are lost on both sides, and reflexes and tone are let go of',
    reflex: 'the arc is whole and let go of from above',
    head: 'the fibres from the cortex to the motor cells of the brainstem are lost on both sides',
    spared: 'the anterior horn cells and the sensory paths are kept',
  },
  postsynaptic: {
    strength: 'transmission to the muscle fails, more with use',
    head: 'transmission fails first in muscles that are hardly ever at rest: lids, eyes, face and throat',
    spared:
      'transmission is safe where the nerve releases enough for the muscle, and reflexes and feeling are untouched',
  },
  presynaptic: {
    strength: 'too little transmitter is released, less at rest than after effort',
    reflex: 'a single volley releases too little transmitter to move the muscle',
    autonomic: 'autonomic endings release too little transmitter as well',
    head: 'too little transmitter reaches lids, eyes and throat',
    spared: 'enough transmitter is released there',
  },
} as const satisfies Record<string, Reasons>;
