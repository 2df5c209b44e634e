/** Complaints that several tables of causes name together. */

export const spinalPain = ['back-pain', 'thoracic-back-pain', 'neck-pain'] as const;
export const weightLoss = ['weight-loss', 'recent-weight-loss'] as const;
