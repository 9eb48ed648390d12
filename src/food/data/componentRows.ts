/**
 * Components that tables and records list without being asked: id, tagname, name, unit, group, then the unit that
 * INFOODS gives the tagname where it is another, and the list that the tagname is from where that is not
 * INFOODS's: `SR28`, or `own`. Sources: see `components`.
 */
export const componentRows = `
energy|ENERC|energy|kcal|energy|kJ
protein|PROCNT|protein|g|proximate
fat|FAT|fat|g|proximate
carbohydrateByDifference|CHOCDF|carbohydrate by difference|g|proximate
availableCarbohydrate|CHOAVLDF|available carbohydrate|g|carbohydrate
fibre|FIBTG|fibre|g|carbohydrate
solubleFibre|FIBSOL|soluble fibre|g|carbohydrate
sugars|SUGAR|sugars|g|carbohydrate
addedSugars|SUGAD|added sugars|g|carbohydrate
polyols|POLYL|polyols|g|carbohydrate|mg
organicAcids|OA|organic acids|g|carbohydrate
starch|STARCH|starch|g|carbohydrate
water|WATER|water|g|proximate
ash|ASH|ash|g|proximate
alcohol|ALC|alcohol|g|proximate
saturatedFat|FASAT|saturated fat|g|fattyAcid
monounsaturatedFat|FAMS|monounsaturated fat|g|fattyAcid
polyunsaturatedFat|FAPU|polyunsaturated fat|g|fattyAcid
transFat|FATRN|trans fat|g|fattyAcid
omega3|FAPUN3|omega-3 fatty acids|g|fattyAcid
omega6|FAPUN6|omega-6 fatty acids|g|fattyAcid
linoleicAcid|F18D2CN6|linoleic acid (18:2 n-6)|g|fattyAcid
alphaLinolenicAcid|F18D3CN3|alpha-linolenic acid (18:3 n-3)|g|fattyAcid
epa|F20D5N3|EPA (20:5 n-3)|g|fattyAcid
dpa|F22D5N3|DPA (22:5 n-3)|g|fattyAcid
dha|F22D6N3|DHA (22:6 n-3)|g|fattyAcid
salt|NACL|salt|g|mineral|mg
cholesterol|CHOLE|cholesterol|mg|other
sodium|NA|sodium|mg|mineral
potassium|K|potassium|mg|mineral
calcium|CA|calcium|mg|mineral
magnesium|MG|magnesium|mg|mineral
phosphorus|P|phosphorus|mg|mineral
iron|FE|iron|mg|mineral
zinc|ZN|zinc|mg|mineral
copper|CU|copper|mg|mineral
manganese|MN|manganese|mg|mineral|µg
chloride|CLD|chloride|mg|mineral
fluoride|FD|fluoride|mg|mineral|µg
vitaminC|VITC|vitamin C|mg|vitamin
thiamin|THIA|thiamin|mg|vitamin
riboflavin|RIBF|riboflavin|mg|vitamin
niacin|NIA|niacin, preformed|mg|vitamin
niacinEquivalents|NIAEQ|niacin equivalents|mg|vitamin
pantothenicAcid|PANTAC|pantothenic acid|mg|vitamin
vitaminB6|VITB6A|vitamin B6|mg|vitamin
vitaminE|TOCPHA|vitamin E (alpha-tocopherol)|mg|vitamin
choline|CHOLN|choline|mg|vitamin
betaine|BETN|betaine|mg|other
caffeine|CAFFN|caffeine|mg|other
theobromine|THEBRN|theobromine|mg|other
coumarin|COUMARIN|coumarin|mg|other||own
phytate|PHYTAC|phytate|mg|other
oxalate|OXALAC|oxalate|mg|other
phytosterols|PHYSTR|phytosterols|mg|other
selenium|SE|selenium|µg|mineral
iodine|ID|iodine|µg|mineral
chromium|CR|chromium|µg|mineral
molybdenum|MO|molybdenum|µg|mineral
vitaminARae|VITA_RAE|vitamin A, retinol activity equivalents|µg|vitamin||SR28
vitaminARe|VITA|vitamin A, retinol equivalents|µg|vitamin
retinol|RETOL|retinol|µg|vitamin
betaCarotene|CARTB|beta-carotene|µg|carotenoid
alphaCarotene|CARTA|alpha-carotene|µg|carotenoid
betaCryptoxanthin|CRYPXB|beta-cryptoxanthin|µg|carotenoid
lycopene|LYCPN|lycopene|µg|carotenoid
luteinZeaxanthin|LUT+ZEA|lutein and zeaxanthin|µg|carotenoid||SR28
vitaminD|VITD|vitamin D (D2 and D3)|µg|vitamin
vitaminK|VITK1|vitamin K (phylloquinone)|µg|vitamin
biotin|BIOT|biotin|µg|vitamin
folate|FOL|folate, total|µg|vitamin
folateDfe|FOLDFE|folate, dietary folate equivalents|µg|vitamin
foodFolate|FOLFD|folate, naturally in food|µg|vitamin
folicAcid|FOLAC|folic acid|µg|vitamin
vitaminB12|VITB12|vitamin B12|µg|vitamin
tryptophan|TRP|tryptophan|g|aminoAcid|mg
threonine|THR|threonine|g|aminoAcid|mg
isoleucine|ILE|isoleucine|g|aminoAcid|mg
leucine|LEU|leucine|g|aminoAcid|mg
lysine|LYS|lysine|g|aminoAcid|mg
methionine|MET|methionine|g|aminoAcid|mg
cystine|CYS|cystine|g|aminoAcid|mg
phenylalanine|PHE|phenylalanine|g|aminoAcid|mg
tyrosine|TYR|tyrosine|g|aminoAcid|mg
valine|VAL|valine|g|aminoAcid|mg
arginine|ARG|arginine|g|aminoAcid|mg
histidine|HIS|histidine|g|aminoAcid|mg
alanine|ALA|alanine|g|aminoAcid|mg
asparticAcid|ASP|aspartic acid|g|aminoAcid|mg
glutamicAcid|GLU|glutamic acid|g|aminoAcid|mg
glycine|GLY|glycine|g|aminoAcid|mg
proline|PRO|proline|g|aminoAcid|mg
serine|SER|serine|g|aminoAcid|mg
`;
