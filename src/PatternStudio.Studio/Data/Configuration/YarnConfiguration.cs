using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class YarnConfiguration : IEntityTypeConfiguration<Yarn>
{
    public void Configure(EntityTypeBuilder<Yarn> yarn)
    {
        yarn.ToTable("Yarns");
        yarn.Property(it => it.Id).ValueGeneratedNever();
        yarn.Property(it => it.Name).HasMaxLength(Yarn.NameLength);
        yarn.Property(it => it.Fibre).HasMaxLength(Yarn.NameLength);
        yarn.Property(it => it.ColourName).HasMaxLength(Yarn.NameLength);
        yarn.Property(it => it.ColourHex).HasMaxLength(7);
        yarn.Property(it => it.Care).HasMaxLength(Yarn.CareLength);
        yarn.Property(it => it.Price).HasPrecision(12, 2);
        yarn.Property(it => it.Currency).HasMaxLength(3);
        yarn.Property(it => it.RowVersion).IsConcurrencyToken();
        yarn.Ignore(it => it.Details);
        yarn.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
        yarn.HasIndex(it => new { it.StudioId, it.Name });
    }
}
