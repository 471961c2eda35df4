/** What decides a supplemental statement besides its figures; each is the section of `eu-clp/supplemental.json` that asks. */
export type OpenQuestion =
  | 'lead'
  | 'cyanoacrylate'
  | 'cement'
  | 'epoxy'
  | 'activeChlorine'
  | 'cadmium'
  | 'flammableInUse'
  | 'titaniumDioxide'
  | 'titaniumDioxideAnnulled'
  | 'gasRelease'
  | 'skinDryness'
  | 'corrosiveMechanism'
  | 'mayBeInhaled'
  | 'askedByEntry';
