"""Families of garden genera by APG IV (source ``apg4``): what a crop's family is held against."""

_FAMILIES = {
    "Actinidiaceae": "Actinidia",
    "Aizoaceae": "Mesembryanthemum Tetragonia",
    "Amaranthaceae": (
        "Amaranthus Atriplex Beta Blitum Celosia Chenopodium Dysphania Gomphrena Salicornia Salsola Spinacia "
        "Suaeda"
    ),
    "Amaryllidaceae": "Allium Galanthus Narcissus",
    "Apiaceae": (
        "Ammi Anethum Angelica Anthriscus Apium Arracacia Carum Coriandrum Crithmum Cryptotaenia Cuminum "
        "Daucus Eryngium Foeniculum Levisticum Myrrhis Oenanthe Pastinaca Petroselinum Pimpinella Sium"
    ),
    "Araceae": "Colocasia",
    "Asparagaceae": "Asparagus Convallaria Hyacinthus Muscari",
    "Asteraceae": (
        "Achillea Ageratum Anthemis Arctium Artemisia Bellis Calendula Callistephus Carthamus Centaurea "
        "Chamaemelum Cichorium Coreopsis Cosmos Cynara Dahlia Echinacea Gaillardia Galinsoga Glebionis "
        "Guizotia Helianthus Helichrysum Lactuca Leucanthemum Matricaria Rudbeckia Scorzonera Silybum "
        "Smallanthus Stevia Symphyotrichum Tagetes Tanacetum Taraxacum Tithonia Tragopogon Xerochrysum Zinnia"
    ),
    "Basellaceae": "Basella Ullucus",
    "Boraginaceae": "Borago Cynoglossum Echium Myosotis Phacelia Pulmonaria Symphytum",
    "Brassicaceae": (
        "Armoracia Barbarea Brassica Bunias Camelina Crambe Diplotaxis Eruca Erysimum Eutrema Hesperis "
        "Iberis Isatis Lepidium Lobularia Lunaria Matthiola Nasturtium Raphanus Sinapis"
    ),
    "Cannabaceae": "Cannabis Humulus",
    "Caprifoliaceae": "Knautia Lonicera Scabiosa Sixalix Valeriana Valerianella",
    "Caryophyllaceae": "Agrostemma Dianthus Gypsophila Saponaria Silene Stellaria",
    "Cleomaceae": "Cleome Tarenaya",
    "Convolvulaceae": "Convolvulus Ipomoea",
    "Cucurbitaceae": "Benincasa Citrullus Cucumis Cucurbita Lagenaria Luffa Melothria Momordica Sechium",
    "Dioscoreaceae": "Dioscorea",
    "Ericaceae": "Vaccinium",
    "Euphorbiaceae": "Manihot Ricinus",
    "Fabaceae": (
        "Anthyllis Arachis Cajanus Canavalia Cicer Crotalaria Glycine Lablab Lathyrus Lens Lotus Lupinus "
        "Medicago Melilotus Onobrychis Ornithopus Pachyrhizus Phaseolus Pisum Psophocarpus Trifolium "
        "Trigonella Vicia Vigna"
    ),
    "Grossulariaceae": "Ribes",
    "Iridaceae": "Crocus Gladiolus Iris",
    "Lamiaceae": (
        "Agastache Clinopodium Hyssopus Lavandula Leonurus Melissa Mentha Monarda Nepeta Ocimum Origanum "
        "Perilla Prunella Pycnanthemum Rosmarinus Salvia Satureja Stachys Teucrium Thymus"
    ),
    "Lauraceae": "Laurus",
    "Liliaceae": "Lilium Tulipa",
    "Limnanthaceae": "Limnanthes",
    "Linaceae": "Linum",
    "Malvaceae": "Abelmoschus Alcea Althaea Hibiscus Lavatera Malva",
    "Montiaceae": "Claytonia",
    "Moraceae": "Ficus Morus",
    "Onagraceae": "Clarkia Oenothera",
    "Oxalidaceae": "Oxalis",
    "Papaveraceae": "Eschscholzia Papaver",
    "Pedaliaceae": "Sesamum",
    "Plantaginaceae": "Antirrhinum Digitalis Plantago",
    "Plumbaginaceae": "Limonium",
    "Poaceae": (
        "Avena Cymbopogon Hordeum Lolium Oryza Panicum Pennisetum Phleum Secale Setaria Sorghum Triticum Zea"
    ),
    "Polemoniaceae": "Phlox",
    "Polygonaceae": "Fagopyrum Rheum Rumex",
    "Portulacaceae": "Portulaca",
    "Ranunculaceae": "Aconitum Anemone Aquilegia Consolida Delphinium Nigella Ranunculus",
    "Rosaceae": "Alchemilla Aronia Cydonia Fragaria Malus Prunus Pyrus Rosa Rubus Sanguisorba",
    "Rutaceae": "Citrus Ruta",
    "Solanaceae": "Capsicum Lycium Lycopersicon Nicotiana Petunia Physalis Solanum",
    "Tropaeolaceae": "Tropaeolum",
    "Urticaceae": "Urtica",
    "Verbenaceae": "Aloysia Lippia Verbena",
    "Violaceae": "Viola",
    "Vitaceae": "Vitis",
    "Zingiberaceae": "Curcuma Elettaria Zingiber",
}
_FAMILY_OF = {genus: family for family, genera in _FAMILIES.items() for genus in genera.split()}


def family_of(botanical: str) -> str | None:
    """Family of a botanical name by its genus; None where the genus is not in the table."""
    words = botanical.replace("×", " ").split()
    return _FAMILY_OF.get(words[0]) if words else None
