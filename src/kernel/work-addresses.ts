import type { WorkKey } from './works.ts';

/** Stable web addresses of published guidance: the body's own page, or the DOI. Other works are found by their titles. */
export const workAddresses: Readonly<Partial<Record<WorkKey, string>>> = {
  'nice-ng127': 'https://www.nice.org.uk/guidance/ng127',
  'nice-ng234': 'https://www.nice.org.uk/guidance/ng234',
  'nice-ng128': 'https://www.nice.org.uk/guidance/ng128',
  'nice-ng239': 'https://www.nice.org.uk/guidance/ng239',
  'nice-ng59': 'https://www.nice.org.uk/guidance/ng59',
  'racgp-cervical-radiculopathy-2013':
    'https://www.racgp.org.au/clinical-resources/clinical-guidelines/key-racgp-guidelines/view-all-racgp-guidelines/mri-referral/mri-of-the-cervical-spine/cervical-radiculopathy',
  'nice-ng240': 'https://www.nice.org.uk/guidance/ng240',
  'nice-ng228': 'https://www.nice.org.uk/guidance/ng228',
  'nice-ng217': 'https://www.nice.org.uk/guidance/ng217',
  'nice-ng232': 'https://www.nice.org.uk/guidance/ng232',
  'nice-ng133': 'https://www.nice.org.uk/guidance/ng133',
  'nice-ng97': 'https://www.nice.org.uk/guidance/ng97',
  'nice-ng71': 'https://www.nice.org.uk/guidance/ng71',
  'aan-dsp-laboratory-2009': 'https://doi.org/10.1212/01.wnl.0000336370.51010.a1',
  'ean-pns-gbs-2023': 'https://doi.org/10.1111/ene.16073',
  'iih-consensus-2018': 'https://doi.org/10.1136/jnnp-2017-317440',
  'mg-consensus-2021': 'https://doi.org/10.1212/WNL.0000000000011124',
  'autoimmune-encephalitis-2016': 'https://doi.org/10.1016/S1474-4422(15)00401-9',
  'first-seizure-aan-2007': 'https://doi.org/10.1212/01.wnl.0000285084.93652.43',
  'limb-ischaemia-esvs-2020': 'https://doi.org/10.1016/j.ejvs.2019.09.006',
  'bppv-2017': 'https://doi.org/10.1177/0194599816689667',
};
