/**
 * The one bibliography. Every row of every clinical table names one of these works (see `cite.ts`).
 * Titles are shortened; a DOI-grade citation is not the aim, finding the work again is.
 */
export const works = {
  'common-practice': 'Known to every practitioner; no paper is needed.',
  'from-memory': 'A judged or remembered value; not looked up.',
  'mrc-aids':
    'Aids to the Examination of the Peripheral Nervous System, 5th ed. Guarantors of Brain, 2010 (after Medical Research Council Memorandum 45).',
  isncsci:
    'International Standards for Neurological Classification of Spinal Cord Injury, revised 2019. ASIA and ISCoS.',
  'isncsci-key-sensory-points': 'Key Sensory Points guide to the International Standards. ASIA, 2008.',
  'ninds-reflex-scale': 'Hallett M. NINDS myotatic reflex scale. Neurology 1993;43:2723.',
  'preston-shapiro': 'Preston DC, Shapiro BE. Electromyography and Neuromuscular Disorders, 4th ed.',
  blumenfeld: 'Blumenfeld H. Neuroanatomy through Clinical Cases, 3rd ed.',
  brazis: 'Brazis PW, Masdeu JC, Biller J. Localization in Clinical Neurology, 7th ed.',
  'adams-victor': "Ropper AH et al. Adams and Victor's Principles of Neurology, 11th ed.",
  dejong: "Campbell WW, Barohn RJ. DeJong's The Neurologic Examination, 8th ed.",
  'grays-anatomy': "Standring S (ed). Gray's Anatomy, 42nd ed.",
  'ucsf-root-table': 'UCSF Hospitalist Handbook, table of spinal nerve roots with dominant roots.',
  'lower-limb-root-table': 'Muscle, nerve and root tables for the lower limb in a public orthopaedic anatomy text.',
  'public-reflex-table': 'Public tables of reflexes and spinal levels (Upstate Medical University anatomy).',
  'cutaneous-reflex-notes':
    'Public neuroanatomy notes on cutaneous and brainstem reflex levels; reviews of the anal reflex.',
  'aan-dsp-laboratory-2009':
    'England JD et al. Practice parameter: distal symmetric polyneuropathy, laboratory and genetic testing. Neurology 2009;72:185-92.',
  'aan-dsp-autonomic-2009':
    'England JD et al. Practice parameter: distal symmetric polyneuropathy, autonomic testing and biopsy. Neurology 2009;72:177-84.',
  'ean-pns-gbs-2023': 'van Doorn PA et al. EAN/PNS guideline on Guillain-Barre syndrome. Eur J Neurol 2023;30:3646-74.',
  'gbs-ten-steps-2019':
    'Leonhard SE et al. Diagnosis and management of Guillain-Barre syndrome in ten steps. Nat Rev Neurol 2019;15:671-83.',
  'gbs-fokke-2014':
    'Fokke C et al. Diagnosis of Guillain-Barre syndrome and validation of Brighton criteria. Brain 2014;137:33-43.',
  'gbs-lawn-2001':
    'Lawn ND et al. Anticipating mechanical ventilation in Guillain-Barre syndrome. Arch Neurol 2001;58:893-8.',
  'ean-pns-cidp-2021':
    'Van den Bergh PYK et al. EAN/PNS guideline on CIDP, second revision. Eur J Neurol 2021;28:3556-83.',
  'nice-ng127': 'NICE NG127 Suspected neurological conditions: recognition and referral. 2019, updated 2023.',
  'nice-ng234': 'NICE NG234 Spinal metastases and metastatic spinal cord compression. 2023.',
  'news2-2017': 'Royal College of Physicians, National Early Warning Score (NEWS) 2, London 2017',
  'girft-ces-2023': 'GIRFT National suspected cauda equina syndrome pathway. 2023.',
  'nice-ng41': 'NICE NG41 Spinal injury: assessment and initial management. 2016.',
  'nice-ng128': 'NICE NG128 Stroke and transient ischaemic attack in over 16s. 2019, updated 2022.',
  'cervical-dissection-2022':
    'Keser Z et al. Cervical artery dissections: etiopathogenesis and management. Vasc Health Risk Manag 2022;18:685-700.',
  'boston-criteria-2022':
    'Charidimou A et al. Boston criteria version 2.0 for cerebral amyloid angiopathy. Lancet Neurol 2022;21:714-25.',
  'cadasil-gene-reviews': 'CADASIL. GeneReviews, University of Washington, Seattle.',
  'rcvs-2012': 'Ducros A. Reversible cerebral vasoconstriction syndrome. Lancet Neurol 2012;11:906-17.',
  'pres-2021':
    'Clinical characteristics and outcomes of patients admitted for posterior reversible encephalopathy syndrome. BMC Neurol 2021, doi 10.1186/s12883-021-02143-6.',
  'cns-vasculitis-2011': 'Hajj-Ali RA et al. Primary angiitis of the CNS. Lancet Neurol 2011;10:561-72.',
  'moyamoya-2009': 'Scott RM, Smith ER. Moyamoya disease and moyamoya syndrome. N Engl J Med 2009;360:1226-37.',
  'cavernoma-2012': 'Al-Shahi Salman R et al. Cerebral cavernous malformations. Lancet Neurol 2012;11:217-24.',
  'venous-thrombosis-2012':
    'Bousser MG, Crassard I. Cerebral venous thrombosis, pregnancy and oral contraceptives. Thromb Res 2012;130 Suppl 1:S19-22.',
  'subdural-2002':
    'Adhiyaman V et al. Chronic subdural haematoma in the elderly. Postgrad Med J 2002;78:71-5; J R Soc Med 2002;95:290-2.',
  'nice-ng239': 'NICE NG239 Vitamin B12 deficiency in over 16s. 2024.',
  'nice-ng59': 'NICE NG59 Low back pain and sciatica in over 16s. 2016, updated 2020.',
  'racgp-cervical-radiculopathy-2013':
    'Royal Australian College of General Practitioners. Clinical guidance for MRI referral: cervical radiculopathy. 2013.',
  'ada-standards': 'American Diabetes Association. Standards of Care in Diabetes, diagnosis and classification.',
  'ada-neuropathy-2017':
    'Pop-Busui R et al. Diabetic neuropathy: position statement of the ADA. Diabetes Care 2017;40:136-54.',
  'visser-2015': 'Visser NA et al. Incidence of polyneuropathy in Utrecht. Neurology 2015;84:259-64.',
  'hanewinckel-2016':
    'Hanewinckel R et al. Epidemiology and risk factors of chronic polyneuropathy. Eur J Epidemiol 2016;31:5-20.',
  'saporta-2011':
    'Saporta ASD et al. Charcot-Marie-Tooth disease subtypes and genetic testing strategies. Ann Neurol 2011;69:22-33.',
  'szigeti-2009': 'Szigeti K, Lupski JR. Charcot-Marie-Tooth disease. Eur J Hum Genet 2009;17:703-10.',
  'scherer-2005': 'Scherer K et al. Does this patient have myasthenia gravis? JAMA 2005;293:1906-14.',
  'mg-consensus-2021':
    'Narayanaswami P et al. International consensus guidance for management of myasthenia gravis. Neurology 2021;96:114-22.',
  'lems-titulaer-2011': 'Titulaer MJ et al. Lambert-Eaton myasthenic syndrome. Lancet Neurol 2011;10:1098-107.',
  'botulism-2021':
    'Rao AK et al. Clinical guidelines for diagnosis and treatment of botulism. MMWR Recomm Rep 2021;70(2):1-30.',
  'eular-acr-myositis-2017':
    'Lundberg IE et al. EULAR/ACR classification criteria for idiopathic inflammatory myopathies. Ann Rheum Dis 2017;76:1955-64.',
  'gold-coast-2020':
    'Shefner JM et al. A proposal for new diagnostic criteria for ALS (Gold Coast). Clin Neurophysiol 2020;131:1975-8.',
  'nmosd-2015': 'Wingerchuk DM et al. International consensus diagnostic criteria for NMOSD. Neurology 2015;85:177-89.',
  'copper-deficiency-2010': 'Jaiser SR, Winston GP. Copper deficiency myelopathy. J Neurol 2010;257:869-81.',
  'gad-ataxia-2015':
    'Ariño H et al. Cerebellar ataxia and glutamic acid decarboxylase antibodies. JAMA Neurol 2015;72:1009-16.',
  'cord-infarction-2019':
    'Zalewski NL et al. Characteristics of spontaneous spinal cord infarction. JAMA Neurol 2019;76:56-63.',
  'adem-2013':
    'Krupp LB et al. Criteria for pediatric multiple sclerosis and immune-mediated demyelination. Mult Scler 2013;19:1261-7.',
  'pml-2013': 'Berger JR et al. PML diagnostic criteria: AAN consensus statement. Neurology 2013;80:1430-8.',
  'neuro-behcet-2019':
    "Neuro-Behçet's disease by the international consensus recommendation, 110 patients. J Clin Neurol 2019, PMC6785476.",
  'autoimmune-encephalitis-2016':
    'Graus F et al. A clinical approach to diagnosis of autoimmune encephalitis. Lancet Neurol 2016;15:391-404.',
  'viral-encephalitis-2012':
    'Solomon T et al. Management of suspected viral encephalitis in adults: UK guideline. J Infect 2012;64:347-73.',
  'listeria-brainstem-1993':
    'Armstrong RW, Fung PC. Brainstem encephalitis due to Listeria monocytogenes: case report and review. Clin Infect Dis 1993;16:689-702.',
  'neurocysticercosis-2017':
    'Del Brutto OH et al. Revised diagnostic criteria for neurocysticercosis. J Neurol Sci 2017;372:202-10.',
  'cns-lymphoma-2017': 'Grommes C, DeAngelis LM. Primary CNS lymphoma. J Clin Oncol 2017;35:2410-8.',
  'transverse-myelitis-2002':
    'Transverse Myelitis Consortium Working Group. Proposed diagnostic criteria. Neurology 2002;59:499-505.',
  'cook-2010':
    'Cook C et al. Clustered clinical findings for diagnosis of cervical spine myelopathy. J Man Manip Ther 2010;18:175-80.',
  'cook-2009':
    'Cook C et al. Clinical tests for screening and diagnosis of cervical spine myelopathy. J Orthop Sports Phys Ther 2009;39:172-8.',
  'hoffmann-fogarty-2018':
    'Fogarty A et al. A systematic review of the utility of the Hoffmann sign. Spine 2018;43:1664-9.',
  'hoffmann-2023': 'Gruenberger EH et al. The Hoffmann parallax. Orthop Rev 2023.',
  'appasamy-2018': 'Appasamy PT et al. Babinski sign versus finger and foot tapping. Neurol India 2018;66:1377-80.',
  'isaza-2014': 'Isaza Jaramillo SP et al. Accuracy of the Babinski sign. J Neurol Sci 2014;343:66-8.',
  'thaller-2014':
    'Thaller M, Hughes T. Inter-rater agreement of observable and elicitable neurological signs. Clin Med 2014;14:264-7.',
  'hansen-1994':
    'Hansen M et al. Interobserver variation in the evaluation of neurological signs. Acta Neurol Scand 1994;90:145-9.',
  'porphyria-2005':
    'Anderson KE et al. Recommendations for the diagnosis and treatment of the acute porphyrias. Ann Intern Med 2005;142:439-50.',
  'haemorrhagic-stroke-2010':
    'Runchey S, McGee S. Does this patient have a hemorrhagic stroke? Clinical findings distinguishing hemorrhagic stroke from ischemic stroke. JAMA 2010;303:2280-6.',
  'goldstein-simel-2005': 'Goldstein LB, Simel DL. Is this patient having a stroke? JAMA 2005;293:2391-402.',
  'vrancken-2006':
    'Vrancken AFJE et al. Distal sensory loss and absent ankle reflexes in relation to age. J Neurol 2006;253:578-89.',
  'perkins-2001':
    'Perkins BA et al. Simple screening tests for peripheral neuropathy in the diabetes clinic. Diabetes Care 2001;24:250-6.',
  'wainner-2003': 'Wainner RS et al. Clinical examination for cervical radiculopathy. Spine 2003;28:52-62.',
  'cochrane-lumbar-2010':
    'van der Windt DAWM et al. Physical examination for lumbar radiculopathy. Cochrane Database Syst Rev 2010;CD007431.',
  'tawa-2017':
    'Tawa N et al. Accuracy of clinical neurological examination in lumbosacral radiculopathy. BMC Musculoskelet Disord 2017;18:93.',
  'dabbagh-2023':
    'Dabbagh A et al. Diagnostic accuracy of provocative manoeuvres for carpal tunnel syndrome, systematic review. 2023, PMC10294560.',
  'kuhlman-1997':
    'Kuhlman KA, Hennessey WJ. Sensitivity and specificity of carpal tunnel syndrome signs. Am J Phys Med Rehabil 1997;76:451-7.',
  'zoster-limb-paresis-2014':
    'Jones LK et al. Clinical, electrophysiologic, and imaging features of zoster-associated limb paresis. Muscle Nerve 2014;50:177-85.',
  'jeon-2013': 'Jeon CH et al. Hip abductor power in foot drop. Spine 2013;38:257-63.',
  'yngve-1997': 'Yngve D. Abdominal reflexes. J Pediatr Orthop 1997;17:105-8.',
  'abdominal-reflex-1957':
    'Statistical control studies in neurology 8: the cutaneous abdominal reflex. Neurology 1957;7:459.',
  'lim-2009': 'Lim KS et al. Wide range of normality in deep tendon reflexes. Neurol Asia 2009;14:21-5.',
  'ibm-criteria-2014':
    'Lloyd TE et al. Evaluation and construction of diagnostic criteria for inclusion body myositis. Neurology 2014;83:426-33.',
  'amato-russell': 'Amato AA, Russell JA. Neuromuscular Disorders, 2nd ed.',
  'mmn-efns-2010':
    'Joint Task Force EFNS/PNS. Multifocal motor neuropathy, first revision. J Peripher Nerv Syst 2010;15:295-301.',
  'vasculitic-neuropathy-2010':
    'Collins MP et al. PNS guideline on non-systemic vasculitic neuropathy. J Peripher Nerv Syst 2010;15:176-84.',
  'neuralgic-amyotrophy-2016': 'van Eijk JJJ et al. Neuralgic amyotrophy: an update. Muscle Nerve 2016;53:337-50.',
  'bells-palsy-2013':
    "Baugh RF et al. Clinical practice guideline: Bell's palsy. Otolaryngol Head Neck Surg 2013;149(3 Suppl):S1-27.",
  'facial-palsy-peitersen-2002':
    "Peitersen E. Bell's palsy: the spontaneous course of 2,500 peripheral facial nerve palsies of different etiologies. Acta Otolaryngol Suppl 2002;549:4-30.",
  'ramsay-hunt-2001': 'Sweeney CJ, Gilden DH. Ramsay Hunt syndrome. J Neurol Neurosurg Psychiatry 2001;71:149-54.',
  'vestibular-neuritis-2015': 'Strupp M, Magnusson M. Acute unilateral vestibulopathy. Neurol Clin 2015;33:669-85.',
  'meniere-2015': 'Lopez-Escamez JA et al. Diagnostic criteria for Meniere disease. J Vestib Res 2015;25:1-7.',
  'sudden-hearing-loss-2019':
    'Chandrasekhar SS et al. Clinical practice guideline: sudden hearing loss (update). Otolaryngol Head Neck Surg 2019;161(1 Suppl):S1-45.',
  'vestibular-schwannoma-1997':
    'Matthies C, Samii M. Management of 1000 vestibular schwannomas: clinical presentation. Neurosurgery 1997;40:1-10.',
  'trigeminal-neuralgia-ean-2019':
    'Bendtsen L et al. European Academy of Neurology guideline on trigeminal neuralgia. Eur J Neurol 2019;26:831-49.',
  'numb-chin-1992': 'Lossos A, Siegal T. Numb chin syndrome in cancer patients. Neurology 1992;42:1181-4.',
  'trigeminal-sensory-neuropathy-1990':
    'Hagen NA et al. Trigeminal sensory neuropathy associated with connective tissue diseases. Neurology 1990;40:891-6.',
  'vocal-fold-2007':
    'Rosenthal LHS et al. Vocal fold immobility: a longitudinal analysis of etiology over 20 years. Laryngoscope 2007;117:1864-70.',
  'twelfth-nerve-1996': 'Keane JR. Twelfth-nerve palsy: analysis of 100 cases. Arch Neurol 1996;53:561-6.',
  'smell-loss-1991':
    'Deems DA et al. Smell and taste disorders, a study of 750 patients. Arch Otolaryngol Head Neck Surg 1991;117:519-28.',
  'mg-crisis-2011': 'Wendell LC, Levine JM. Myasthenic crisis. Neurohospitalist 2011;1:16-22.',
  'gcs-1974':
    'Teasdale G, Jennett B. Assessment of coma and impaired consciousness: a practical scale. Lancet 1974;304:81-4.',
  'orthostatic-consensus-2011':
    'Freeman R et al. Consensus statement on the definition of orthostatic hypotension. Auton Neurosci 2011;161:46-8.',
  'ngsp-ifcc': 'Hoelzel W et al. IFCC reference system for measurement of hemoglobin A1c. Clin Chem 2004;50:166-74.',
  'loinc-users-guide': "LOINC Users' Guide, appendix on the check digit. Regenstrief Institute.",
  'nice-ng240': 'NICE NG240 Meningitis (bacterial) and meningococcal disease. 2024.',
  'nice-ng97': 'NICE NG97 Dementia: assessment, management and support. 2018.',
  'nice-ng71': "NICE NG71 Parkinson's disease in adults. 2017.",
  'mds-parkinson-2015':
    "Postuma RB et al. MDS clinical diagnostic criteria for Parkinson's disease. Mov Disord 2015;30:1591-601.",
  'functional-signs-2014':
    'Daum C, Hubschmid M, Aybek S. Positive signs in conversion disorder. J Neurol Neurosurg Psychiatry 2014;85:180-90.',
  'bppv-2017':
    'Bhattacharyya N et al. Clinical practice guideline: benign paroxysmal positional vertigo. Otolaryngol Head Neck Surg 2017;156(3 Suppl):S1-47.',
  'nice-ng232': 'NICE NG232 Head injury: assessment and early management. 2023.',
  'nice-ng133': 'NICE NG133 Hypertension in pregnancy: diagnosis and management. 2019, updated 2023.',
  'vestibular-meta-2023':
    'Tarnutzer AA et al. Bedside tests in the acute vestibular syndrome, meta-analysis. Ann Neurol 2023;94:295-308.',
  'cvt-2017': 'Ferro JM et al. ESO guideline on cerebral venous thrombosis. Eur J Neurol 2017;24:1203-13.',
  'pituitary-apoplexy-2011':
    'Rajasekaran S et al. UK guidelines for the management of pituitary apoplexy. Clin Endocrinol 2011;74:9-20.',
  'bacterial-meningitis-2004':
    'van de Beek D et al. Clinical features and prognostic factors in adults with bacterial meningitis. N Engl J Med 2004;351:1849-59.',
  'meningitis-uk-2016':
    'McGill F et al. UK joint specialist societies guideline on acute meningitis in adults. J Infect 2016;72:405-38.',
  'tuberculous-meningitis-2002':
    'Thwaites GE et al. Diagnosis of adult tuberculous meningitis by use of clinical and laboratory features. Lancet 2002;360:1287-92.',
  'cryptococcal-2010':
    'Perfect JR et al. Clinical practice guidelines for the management of cryptococcal disease. Clin Infect Dis 2010;50:291-322.',
  'neurosarcoidosis-2018':
    'Stern BJ et al. Definition and consensus diagnostic criteria for neurosarcoidosis. JAMA Neurol 2018;75:1546-53.',
  'neurosyphilis-2019': 'Ropper AH. Neurosyphilis. N Engl J Med 2019;381:1358-63.',
  'pachymeningitis-2014':
    'Yonekawa T et al. A nationwide survey of hypertrophic pachymeningitis in Japan. J Neurol Neurosurg Psychiatry 2014;85:732-9.',
  'nice-ng228': 'NICE NG228 Subarachnoid haemorrhage caused by a ruptured aneurysm. 2022.',
  'nice-ng217': 'NICE NG217 Epilepsies in children, young people and adults. 2022, updated 2025.',
  'acute-symptomatic-seizure-2010':
    'Beghi E et al. Recommendation for a definition of acute symptomatic seizure. Epilepsia 2010;51:671-5.',
  'bsr-gca-2020':
    'Mackie SL et al. British Society for Rheumatology guideline on giant cell arteritis. Rheumatology 2020;59:e1-23.',
  'delirium-2014': 'Inouye SK et al. Delirium in elderly people. Lancet 2014;383:911-22.',
  'septic-encephalopathy-2012': 'Gofton TE, Young GB. Sepsis-associated encephalopathy. Nat Rev Neurol 2012;8:557-66.',
  'hepatic-encephalopathy-2014':
    'Vilstrup H et al. Hepatic encephalopathy in chronic liver disease: AASLD/EASL guideline. Hepatology 2014;60:715-35.',
  'osmotic-demyelination-2014':
    'Singh TD et al. Central pontine and extrapontine myelinolysis: a systematic review. Eur J Neurol 2014;21:1443-50.',
  'melas-1994': 'Hirano M, Pavlakis SG. MELAS: current concepts. J Child Neurol 1994;9:4-13.',
  'transient-amnesia-1990':
    'Hodges JR, Warlow CP. Syndromes of transient amnesia: towards a classification. J Neurol Neurosurg Psychiatry 1990;53:834-43.',
  'vestibular-migraine-2012': 'Lempert T et al. Vestibular migraine: diagnostic criteria. J Vestib Res 2012;22:167-72.',
  'syncope-esc-2018': 'Brignole M et al. ESC guidelines for syncope. Eur Heart J 2018;39:1883-948.',
  'rolak-1992':
    "Rolak LA et al. Clinical features of Todd's post-epileptic paralysis. J Neurol Neurosurg Psychiatry 1992;55:63-4.",
  'alzheimer-2011':
    "McKhann GM et al. The diagnosis of dementia due to Alzheimer's disease. Alzheimers Dement 2011;7:263-9.",
  'frontotemporal-2011':
    'Rascovsky K et al. Criteria for the behavioural variant of frontotemporal dementia. Brain 2011;134:2456-77.',
  'aphasia-2011': 'Gorno-Tempini ML et al. Classification of primary progressive aphasia. Neurology 2011;76:1006-14.',
  'posterior-atrophy-2017':
    'Crutch SJ et al. Consensus classification of posterior cortical atrophy. Alzheimers Dement 2017;13:870-84.',
  'cjd-tests-table':
    'Review of Creutzfeldt-Jakob disease in the Cleveland Clinic Journal of Medicine, table of sensitivity and specificity of tests.',
  'anterior-inferior-cerebellar-2009':
    'Lee H et al. Infarction in the territory of the anterior inferior cerebellar artery: 82 patients. Stroke 2009;40:3745-51.',
  'cheiro-oral-2009': 'Chen WH. Cheiro-oral syndrome: 76 patients. Yonsei Med J 2009;50:777-83.',
  'hemiballism-1994':
    'Vidakovic A et al. Hemiballism: report of 25 cases. J Neurol Neurosurg Psychiatry 1994;57:945-9.',
  'percheron-2022': 'Zhang B et al. Acute infarction of the artery of Percheron: 23 patients. BMC Neurol 2022.',
  'one-sided-asterixis-1981': 'Unilateral asterixis (letter). Arch Neurol 1981;38:601-2.',
  'medial-medulla-2009': 'Kim JS, Han YS. Medial medullary infarction: 86 patients. Stroke 2009;40:3221-5.',
  'throat-neck-and-arms-2007':
    'Nagashima T et al. Continuous spectrum of pharyngeal-cervical-brachial variant of Guillain-Barré syndrome: 100 patients. Arch Neurol 2007;64:1519-23.',
  'chiari-1999': 'Milhorat TH et al. Chiari I malformation redefined: 364 patients. Neurosurgery 1999;44:1005-17.',
  'caine-1997':
    'Caine D et al. Operational criteria for the classification of chronic alcoholics: Wernicke encephalopathy. J Neurol Neurosurg Psychiatry 1997;62:51-60.',
  'third-nerve-cohort-2017':
    'Fang C et al. Incidence and etiologies of acquired third nerve palsy. JAMA Ophthalmol 2017;135:23-8.',
  'fourth-nerve-2018':
    'Dosunmu EO et al. Incidence and etiology of presumed fourth cranial nerve palsy. Am J Ophthalmol 2018;185:110-4.',
  'sixth-nerve-2004':
    'Patel SV et al. Incidence, associations, and evaluation of sixth nerve palsy using a population-based method. Ophthalmology 2004;111:369-75.',
  'cavernous-sinus-1996': 'Keane JR. Cavernous sinus syndrome: analysis of 151 cases. Arch Neurol 1996;53:967-71.',
  'cavernous-thrombosis-1986':
    'Southwick FS et al. Septic thrombosis of the dural venous sinuses. Medicine 1986;65:82-106.',
  'mucormycosis-2005': 'Spellberg B et al. Novel perspectives on mucormycosis. Clin Microbiol Rev 2005;18:556-69.',
  'zoster-ophthalmicus-2008': 'Liesegang TJ. Herpes zoster ophthalmicus. Ophthalmology 2008;115(2 Suppl):S3-12.',
  'thyroid-eye-2021':
    "Bartalena L et al. European Group on Graves' Orbitopathy guideline. Eur J Endocrinol 2021;185:G43-67.",
  'ichd-3': 'International Classification of Headache Disorders, 3rd ed. Cephalalgia 2018;38:1-211.',
  'cervical-dissection-2009': 'Debette S, Leys D. Cervical-artery dissections. Lancet Neurol 2009;8:668-78.',
  'horner-1980':
    "Maloney WF et al. Evaluation of the causes and accuracy of pharmacologic localization in Horner's syndrome. Am J Ophthalmol 1980;90:394-402.",
  'adie-1977': "Thompson HS. Adie's syndrome: some new observations. Trans Am Ophthalmol Soc 1977;75:587-626.",
  'gca-signs-2020':
    'van der Geest KSM et al. Diagnostic accuracy of symptoms, physical signs, and laboratory tests for giant cell arteritis. JAMA Intern Med 2020;180:1295-304.',
  'optic-neuritis-1991':
    'Optic Neuritis Study Group. The clinical profile of optic neuritis. Arch Ophthalmol 1991;109:1673-8.',
  'optic-neuritis-2022':
    'Petzold A et al. Diagnosis and classification of optic neuritis. Lancet Neurol 2022;21:1120-34.',
  'ischaemic-optic-2009': 'Hayreh SS. Ischemic optic neuropathy. Prog Retin Eye Res 2009;28:34-62.',
  'retinal-artery-2021':
    'Mac Grory B et al. Management of central retinal artery occlusion: American Heart Association statement. Stroke 2021;52:e282-94.',
  'mitochondrial-optic-2009':
    'Yu-Wai-Man P et al. Inherited mitochondrial optic neuropathies. J Med Genet 2009;46:145-58.',
  'toxic-optic-2011': 'Sharma P, Sharma R. Toxic optic neuropathy. Indian J Ophthalmol 2011;59:137-41.',
  'iih-consensus-2018':
    'Mollan SP et al. Idiopathic intracranial hypertension: consensus guidelines on management. J Neurol Neurosurg Psychiatry 2018;89:1088-100.',
  'autonomic-dysreflexia-2005':
    'Bycroft J et al. Autonomic dysreflexia: a medical emergency. Postgrad Med J 2005;81:232-5.',
  'first-seizure-aan-2007':
    'Krumholz A et al. Practice parameter: evaluating an apparent unprovoked first seizure in adults. Neurology 2007;69:1996-2007.',
  'hypoglycaemia-endocrine-2009':
    'Cryer PE et al. Evaluation and management of adult hypoglycemic disorders: Endocrine Society guideline. J Clin Endocrinol Metab 2009;94:709-28.',
  'hyponatraemia-2014':
    'Spasovski G et al. Clinical practice guideline on diagnosis and treatment of hyponatraemia. Eur J Endocrinol 2014;170:G1-47.',
  'extrip-lithium-2015':
    'Decker BS et al. Extracorporeal treatment for lithium poisoning: systematic review and recommendations from the EXTRIP workgroup. Clin J Am Soc Nephrol 2015;10:875-87.',
  'organophosphate-2004':
    'Eddleston M et al. Early management after self-poisoning with an organophosphorus or carbamate pesticide. Crit Care 2004;8:R391-7.',
  'nice-ng12': 'NICE NG12 Suspected cancer: recognition and referral. 2015.',
  'nice-ng19': 'NICE NG19 Diabetic foot problems: prevention and management. 2015.',
  'neuroleptic-sensitivity-1992':
    'McKeith I et al. Neuroleptic sensitivity in patients with senile dementia of Lewy body type. BMJ 1992;305:673-8.',
  'contraceptives-migraine-2017':
    'Sacco S et al. Hormonal contraceptives and risk of ischemic stroke in women with migraine: consensus statement of EHF and ESC. J Headache Pain 2017;18:108.',
  'hypercalcaemia-2016':
    'Walsh J et al. Society for Endocrinology emergency guidance: acute hypercalcaemia. Endocr Connect 2016;5:G9-11.',
  'hypocalcaemia-2016':
    'Turner J et al. Society for Endocrinology emergency guidance: acute hypocalcaemia. Endocr Connect 2016;5:G7-8.',
  'limb-ischaemia-esvs-2020':
    'Bjorck M et al. ESVS guideline on the management of acute limb ischaemia. Eur J Vasc Endovasc Surg 2020;59:173-218.',
  'cervical-disc-2016':
    'Harel R, Knoller N. Acute cervical disk herniation resulting in sudden and severe neurologic deterioration. Surg J 2016;2:e96-101.',
  'skull-base-necrosis-2006':
    'Huang XM et al. Diagnosis and management of skull base osteoradionecrosis after radiotherapy for nasopharyngeal carcinoma. Laryngoscope 2006;116:1626-31.',
  'cefepime-2017': 'Payne LE et al. Cefepime-induced neurotoxicity: a systematic review. Crit Care 2017;21:276.',
  'fosmn-2016': 'Zheng Q et al. Facial onset sensory and motor neuronopathy. Neurol Sci 2016;37:1905-9.',
  'fhir-r4': 'HL7 FHIR Release 4 (4.0.1).',
  'loinc-table': 'LOINC, Regenstrief Institute.',
} as const;

export type WorkKey = keyof typeof works;
